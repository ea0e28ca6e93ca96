package wickbench.people.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** What stands in a window, outermost first; the filter of a table is none of the fields. */
record Seen(Composite box) {

    Stream<String> labels() {
        return all(Label.class).stream().map(Label::getText);
    }

    Button button(String verb) {
        return all(Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(verb))
                .findFirst()
                .orElseThrow();
    }

    <C extends Control> C first(Class<C> type) {
        return all(type).get(0);
    }

    /** Finds controls; fields and lists only in what stands beside the table. */
    <C extends Control> List<C> all(Class<C> type) {
        List<C> found = new ArrayList<>();
        collect(box, type, found);
        return found;
    }

    private static <C extends Control> void collect(Composite from, Class<C> type, List<C> found) {
        for (Control child : from.getChildren()) {
            if (type.isInstance(child) && !filter(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                collect(inner, type, found);
            }
        }
    }

    private static boolean filter(Control control) {
        return control instanceof org.eclipse.swt.widgets.Text && (control.getStyle() & org.eclipse.swt.SWT.SEARCH) != 0
                || control instanceof org.eclipse.swt.widgets.Text text
                        && !text.getMessage().isEmpty();
    }
}
