package wickbench.shell;

import org.eclipse.swt.widgets.Composite;
import org.osgi.annotation.versioning.ConsumerType;
import wickbench.widgets.Glyph;

/**
 * A place in the rail.
 *
 * <p>Made by the framework before it is opened, so its constructor does nothing slow. All methods are called on the UI thread.
 */
@ConsumerType
public interface Page {
    /** The service property with the page's id: lower-case letters and hyphens. */
    String ID = "wickbench.page";

    /** The service property with its place in the rail, an {@code Integer}; small first, without it last. */
    String RANK = "wickbench.page.rank";

    /** Returns its name in the user's language; a {@code &} marks the key that goes with Alt. */
    String title();

    /** Returns the page of the guide that tells of it, a file of the product's {@code docs}. */
    default String guide() {
        return "guide.html";
    }

    /** Returns its drawing for the rail. */
    Glyph glyph();

    /**
     * Fills {@code parent}, which has a layout for one child that takes all the room within the margins of every page, and is
     * disposed by the window.
     *
     * <p>Returns at once; what is slow goes to {@link PageContext#jobs}. When its data is there the page calls
     * {@link PageContext#ready}.
     */
    PagePart open(Composite parent, PageContext context);
}
