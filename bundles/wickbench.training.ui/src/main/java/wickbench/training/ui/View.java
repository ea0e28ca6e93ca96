package wickbench.training.ui;

import java.util.Optional;

/** One of the views of the page; lives until its controls are disposed of. */
interface View {

    /** Puts the focus where work goes on. */
    void focus();

    /** Loads anew what it shows, and leaves what is half done alone. */
    default void refresh() {}

    /** Hears that somebody else has the desk. */
    default void actor() {}

    /** Returns what must survive when the page is made anew in another look. */
    default Optional<Object> draft() {
        return Optional.empty();
    }

    default void restore(Object draft) {}
}
