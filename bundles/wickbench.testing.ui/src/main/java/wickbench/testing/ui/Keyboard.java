package wickbench.testing.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Presses keys as a person does: through the display, so that the focus decides who gets them. */
public record Keyboard(TestDesk desk) {
    /** A key that goes to no control of ours is waited for no longer. */
    private static final int UNHEARD_MILLIS = 1000;

    public void type(String text) {
        text.chars().forEach(letter -> press((char) letter, 0));
    }

    public void tab() {
        press(SWT.TAB, SWT.TAB);
    }

    public void enter() {
        press(SWT.CR, SWT.CR);
    }

    public void key(int code) {
        press((char) 0, code);
    }

    /** Holds a key down so long that it repeats itself. */
    public void hold(String letter, int millis) {
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

    /** Goes on when the window has seen the key go up again: a busy machine hands keys on late. */
    private void press(char letter, int code) {
        Display display = desk.shell().getDisplay();
        boolean[] up = new boolean[1];
        Listener heard = event -> up[0] = true;
        display.addFilter(SWT.KeyUp, heard);
        Event event = new Event();
        event.character = letter;
        event.keyCode = code;
        event.type = SWT.KeyDown;
        display.post(event);
        event.type = SWT.KeyUp;
        display.post(event);
        display.timerExec(UNHEARD_MILLIS, () -> up[0] = true);
        desk.await(() -> up[0]);
        display.removeFilter(SWT.KeyUp, heard);
        pause(5);
    }
}
