package wickbench.widgets;

import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The right half of a tab: one thing in full, or the form of what is done with it. */
public final class Side {
    private final Scroller scroller;

    public Side(Composite parent, Theme theme) {
        scroller = new Scroller(parent, theme);
    }

    /** Shows something else, from its top. */
    public void fill(Consumer<Composite> content) {
        clear();
        content.accept(scroller.content());
        measure();
    }

    public void clear() {
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
    }

    public void measure() {
        scroller.measure();
    }

    /** Returns the control to lay out. */
    public Composite control() {
        return scroller.control();
    }

    public Composite content() {
        return scroller.content();
    }
}
