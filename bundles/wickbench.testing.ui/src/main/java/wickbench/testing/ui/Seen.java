package wickbench.testing.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What stands in a window, and pressing it. */
public record Seen(Composite in) {

    public List<String> words() {
        return all(Label.class).stream().map(Label::getText).toList();
    }

    public boolean says(String part) {
        return words().stream().anyMatch(word -> word.contains(part));
    }

    /** Tells whether a button is there, by its words without the mark of its key. */
    public boolean has(String verb) {
        return buttons(verb).findFirst().isPresent();
    }

    public Button button(String verb) {
        return buttons(verb)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button '" + verb + "' among "
                        + all(Button.class).stream().map(Button::getText).toList()));
    }

    private Stream<Button> buttons(String verb) {
        return all(Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(verb));
    }

    public void press(String verb) {
        button(verb).notifyListeners(SWT.Selection, new Event());
    }

    /** Returns the field that stands behind a label. */
    public Text field(String label) {
        return behind(label, Text.class);
    }

    public Combo choice(String label) {
        return behind(label, Combo.class);
    }

    public void choose(String label, String value) {
        Combo combo = choice(label);
        combo.select(combo.indexOf(value));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private <C extends Control> C behind(String label, Class<C> type) {
        for (Label words : all(Label.class)) {
            if (words.getText().equals(label)) {
                Control[] row = words.getParent().getChildren();
                for (int i = 0; i < row.length - 1; i++) {
                    if (row[i] == words && type.isInstance(row[i + 1])) {
                        return type.cast(row[i + 1]);
                    }
                }
            }
        }
        throw new AssertionError("no field '" + label + "' among " + words());
    }

    public <C extends Control> List<C> all(Class<C> type) {
        return all(in, type);
    }

    private static <C extends Control> List<C> all(Composite box, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Control child : box.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(inner, type));
            }
        }
        return found;
    }
}
