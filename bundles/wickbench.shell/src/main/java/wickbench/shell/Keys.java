package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;

/**
 * The keys that work everywhere in the window, and in no sheet over it.
 *
 * <p>Alt with a letter is left to the buttons of the page: there are more places and buttons than letters, so places take Shift too.
 */
final class Keys implements Listener {
    /** Places beyond the ninth have no digit. */
    static final int DIGITS = 9;

    /** What the keys do. */
    interface Acts {
        /** Goes to the place with this number, from 1. */
        void goTo(int number);

        /** Goes to the place whose title marks this letter; tells whether there is one. */
        boolean goTo(char letter);

        void resize(int steps);

        void resizeBack();

        void otherLight();

        void showKeys();

        void openGuide();

        void focusRail();

        void focusDue();

        void focusAlarm();

        void cancelWork();

        void choosePerson();

        void chooseView();
    }

    private final Shell window;
    private final Acts acts;

    private Keys(Shell window, Acts acts) {
        this.window = window;
        this.acts = acts;
    }

    /** Listens until the display is gone. */
    static void listen(Shell window, Acts acts) {
        window.getDisplay().addFilter(SWT.KeyDown, new Keys(window, acts));
    }

    @Override
    public void handleEvent(Event event) {
        if (event.widget instanceof Control at && at.getShell() == window) {
            press(event);
        }
    }

    private void press(Event event) {
        boolean taken = switch (event.stateMask & SWT.MODIFIER_MASK) {
            case SWT.CTRL -> control(event);
            case SWT.CTRL | SWT.SHIFT -> controlShift(event);
            case SWT.ALT | SWT.SHIFT -> Character.isLetter(event.keyCode) && acts.goTo((char) event.keyCode);
            case SWT.SHIFT -> shift(event);
            case SWT.NONE -> plain(event);
            default -> false;
        };
        if (taken) {
            event.doit = false;
            event.type = SWT.None;
        }
    }

    private boolean control(Event event) {
        if (event.keyCode >= '1' && event.keyCode <= '9') {
            acts.goTo(event.keyCode - '0');
            return true;
        }
        switch (event.keyCode) {
            case '+', '=', SWT.KEYPAD_ADD -> acts.resize(1);
            case '-', SWT.KEYPAD_SUBTRACT -> acts.resize(-1);
            case '0' -> acts.resizeBack();
            case SWT.F10 -> acts.chooseView();
            case SWT.F6 -> acts.focusAlarm();
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean controlShift(Event event) {
        switch (event.keyCode) {
            case 'd' -> acts.otherLight();
            case '+', '=' -> acts.resize(1);
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean shift(Event event) {
        switch (event.keyCode) {
            case SWT.F1 -> acts.openGuide();
            case SWT.F6 -> acts.focusDue();
            case SWT.ESC -> acts.cancelWork();
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean plain(Event event) {
        switch (event.keyCode) {
            case SWT.F1 -> acts.showKeys();
            case SWT.F6 -> acts.focusRail();
            case SWT.F10 -> acts.choosePerson();
            default -> {
                return false;
            }
        }
        return true;
    }
}
