package wickbench.bench.ui;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Field;

/**
 * A field of the form with how its value is read and put.
 *
 * @param control what takes the focus and is typed into
 */
record Slot(Field<?> field, Control control, Supplier<String> read, Consumer<String> write) {
    /** Says what is wrong, but not into the words of someone who is still typing; else what is good to know. */
    void say(String complaint, String hint) {
        boolean wrong = !complaint.isEmpty() && !control.isFocusControl();
        String words = wrong ? complaint : hint;
        if (field.said().equals(words)) {
            return;
        }
        if (wrong) {
            field.complain(words);
        } else if (words.isEmpty()) {
            field.clear();
        } else {
            field.hint(words);
        }
    }
}
