package wickbench.testing.ui.access;

import java.util.stream.Stream;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Words for people who mend what a walk finds. */
final class Views {
    private Views() {}

    /** Returns what a control is, what it is called, and in what it stands. */
    static String words(Control control) {
        if (control.isDisposed()) {
            return "(gone)";
        }
        String in = Stream.iterate(control.getParent(), over -> over != null, Composite::getParent)
                .limit(3)
                .map(over -> over.getClass().getSimpleName())
                .reduce((one, other) -> one + "<" + other)
                .orElse("");
        return control.getClass().getSimpleName() + " '" + new Spoken(control).name() + "' in " + in;
    }
}
