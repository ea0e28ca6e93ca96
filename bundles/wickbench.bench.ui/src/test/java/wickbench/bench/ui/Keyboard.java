package wickbench.bench.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import wickbench.testing.ui.TestDesk;

/** Presses keys as a person does: through the display, so that the focus decides who gets them. */
record Keyboard(TestDesk desk) {
    void type(String text) {
        text.chars().forEach(letter -> press((char) letter, 0));
    }

    void tab() {
        press(SWT.TAB, SWT.TAB);
    }

    void enter() {
        press(SWT.CR, SWT.CR);
    }

    void key(int code) {
        press((char) 0, code);
    }

    /** Holds a key down so long that it repeats itself. */
    void hold(String letter, int millis) {
        Event event = new Event();
        event.character = letter.charAt(0);
        event.type = SWT.KeyDown;
        desk.shell().getDisplay().post(event);
        pause(millis);
        event.type = SWT.KeyUp;
        desk.shell().getDisplay().post(event);
        pause(15);
    }

    private void pause(int millis) {
        boolean[] over = new boolean[1];
        desk.shell().getDisplay().timerExec(millis, () -> over[0] = true);
        desk.await(() -> over[0]);
    }

    private void press(char letter, int code) {
        Display display = desk.shell().getDisplay();
        Event event = new Event();
        event.character = letter;
        event.keyCode = code;
        event.type = SWT.KeyDown;
        display.post(event);
        event.type = SWT.KeyUp;
        display.post(event);
        pause(15);
    }
}
