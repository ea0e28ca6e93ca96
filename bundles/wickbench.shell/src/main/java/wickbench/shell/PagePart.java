package wickbench.shell;

import java.util.List;
import java.util.Optional;
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
    default void shown() {
        focus();
    }

    /**
     * Puts the focus where work goes on; leaves it where it is while there is no such place yet.
     *
     * <p>Called again once a page that had to load is ready, if nobody has moved the focus meanwhile.
     */
    default void focus() {}

    /**
     * Hears, while the page is in front, that something was recorded here or came in of another station; loads anew what it shows,
     * and leaves what is chosen or half typed alone.
     */
    default void newsCame() {}

    /** Returns the keys that stand on no button of what is shown now; the sheet of keys tells them with the buttons' letters. */
    default List<KeyHint> keys() {
        return List.of();
    }

    /**
     * Returns what must survive when the page is made anew in another theme or text size, such as a half-filled form.
     *
     * <p>It is a plain value without controls, and goes to {@link #restore} of the part that takes this one's place.
     */
    default Optional<Object> draft() {
        return Optional.empty();
    }

    /** Takes up the draft of the part before it; called right after opening. */
    default void restore(Object draft) {}

    /** Hears that the page is being closed; its controls still live. Listeners it set elsewhere end here. */
    default void closed() {}
}
