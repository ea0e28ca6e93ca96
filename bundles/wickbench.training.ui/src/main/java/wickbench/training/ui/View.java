package wickbench.training.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Composite;

/** One of the views of the page, in front when its tab is chosen. */
interface View {

    /** Returns what is shown. */
    Composite control();

    /** Puts the focus where work goes on. */
    void focus();

    /** Loads anew what it shows, and leaves what is half done alone. */
    default void refresh() {}

    /** Shows one thing of it. */
    default void show(String argument) {}

    /** Hears that somebody else has the desk. */
    default void actor() {}

    /** Returns what must survive when the page is made anew in another look. */
    default Optional<Object> draft() {
        return Optional.empty();
    }

    default void restore(Object draft) {}
}
