package wickbench.shell;

import org.osgi.annotation.versioning.ConsumerType;

/** An open page. All methods are called on the UI thread. */
@ConsumerType
public interface PagePart {

    /**
     * Shows one thing of the page, for example the result with this id.
     *
     * <p>Called right after opening, if something was asked for, and again later. A page that must load first calls
     * {@link PageContext#ready} once it shows it.
     */
    default void show(String argument) {}

    /** Hears that the page came to the front, first time included; puts the focus where work goes on. */
    default void shown() {}

    /** Hears that the page is being closed; its controls still live. Listeners it set elsewhere end here. */
    default void closed() {}
}
