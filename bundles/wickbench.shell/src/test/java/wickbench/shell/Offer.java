package wickbench.shell;

import java.util.Map;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.ComponentServiceObjects;

/** A page offered by hand, as the framework would; two of the same page are the same. */
record Offer(Page page) implements ComponentServiceObjects<Page> {

    static void add(Places places, String id, Page page) {
        places.add(new Offer(page), Map.of(Page.ID, id));
    }

    static void add(Places places, String id, int rank, Page page) {
        places.add(new Offer(page), Map.of(Page.ID, id, Page.RANK, rank));
    }

    @Override
    public Page getService() {
        return page;
    }

    @Override
    public void ungetService(Page service) {}

    @Override
    public ServiceReference<Page> getServiceReference() {
        throw new UnsupportedOperationException();
    }
}
