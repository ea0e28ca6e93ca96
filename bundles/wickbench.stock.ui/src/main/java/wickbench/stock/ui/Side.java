package wickbench.stock.ui;

import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;

/** The right half of a tab: one thing in full, or the form of what is done with it. */
final class Side {
    private final Scroller scroller;

    Side(Composite parent, Theme theme) {
        scroller = new Scroller(parent, theme);
    }

    /** Shows something else, from its top. */
    void fill(Consumer<Composite> content) {
        clear();
        content.accept(scroller.content());
        measure();
    }

    void clear() {
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
    }

    void measure() {
        scroller.measure();
    }

    Composite content() {
        return scroller.content();
    }
}
