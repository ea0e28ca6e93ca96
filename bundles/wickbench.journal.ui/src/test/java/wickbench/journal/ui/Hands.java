package wickbench.journal.ui;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.Badge;

/** A person at the window: real clicks and real keys, through the system, and eyes for what it says. */
record Hands(TestDesk desk, Composite page) {

    void click(String verb) {
        Button button = button(verb);
        reveal(button);
        Point size = button.getSize();
        Point at = button.toDisplay(size.x / 2, size.y / 2);
        Display display = button.getDisplay();
        Event move = new Event();
        move.type = SWT.MouseMove;
        move.x = at.x;
        move.y = at.y;
        display.post(move);
        post(display, SWT.MouseDown, 1);
        post(display, SWT.MouseUp, 1);
        desk.settle();
    }

    private static void post(Display display, int type, int button) {
        Event event = new Event();
        event.type = type;
        event.button = button;
        display.post(event);
    }

    /** Scrolls a control into view, as the keyboard does that reaches it. */
    private void reveal(Control control) {
        control.setFocus();
        desk.settle();
    }

    void type(Text field, String text) {
        field.setFocus();
        desk.settle();
        for (char c : text.toCharArray()) {
            key(c);
        }
        desk.settle();
    }

    void key(char c) {
        Event event = new Event();
        event.character = c;
        // a key without a picture is known to the system by its code
        event.keyCode = c == SWT.TAB ? SWT.TAB : 0;
        event.type = SWT.KeyDown;
        page.getDisplay().post(event);
        event.type = SWT.KeyUp;
        page.getDisplay().post(event);
    }

    Button button(String verb) {
        return all(page, Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(verb))
                .findFirst()
                .orElseThrow();
    }

    List<Text> fields() {
        return all(page, Text.class);
    }

    List<String> words() {
        List<String> words = new ArrayList<>();
        all(page, Label.class).forEach(label -> words.add(label.getText()));
        all(page, Badge.class).forEach(badge -> words.add(badge.shown().word()));
        return words;
    }

    void awaitWord(String word) {
        desk.await(() -> words().contains(word));
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
