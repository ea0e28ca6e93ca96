package wickbench.shell;

import org.osgi.service.component.ComponentServiceObjects;

/**
 * A page that is there to be had; made when somebody first looks at it.
 *
 * <p>A command looks at none. And while services are still coming up, each heard of in the middle of another's coming, a page
 * that was made at once would ask for what is not ready to be given.
 */
final class OfferedPage {
    private final ComponentServiceObjects<Page> offer;
    private Page page;

    OfferedPage(ComponentServiceObjects<Page> offer) {
        this.offer = offer;
    }

    boolean is(ComponentServiceObjects<Page> other) {
        return offer.equals(other);
    }

    /** @throws IllegalStateException when it went in this moment */
    synchronized Page page() {
        if (page == null) {
            page = offer.getService();
        }
        if (page == null) {
            throw new IllegalStateException("the page is going: " + offer.getServiceReference());
        }
        return page;
    }
}
