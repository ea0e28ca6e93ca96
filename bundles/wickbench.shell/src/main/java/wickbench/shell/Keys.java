package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** The keys that work everywhere in the window. */
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
    }

    private final Acts acts;

    private Keys(Acts acts) {
        this.acts = acts;
    }

    /** Listens until the display is gone. */
    static void listen(Display display, Acts acts) {
        display.addFilter(SWT.KeyDown, new Keys(acts));
    }

    @Override
    public void handleEvent(Event event) {
        boolean taken = switch (event.stateMask & SWT.MODIFIER_MASK) {
            case SWT.CTRL -> control(event);
            case SWT.CTRL | SWT.SHIFT -> controlShift(event);
            case SWT.ALT -> Character.isLetter(event.keyCode) && acts.goTo((char) event.keyCode);
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
            default -> {
                return false;
            }
        }
        return true;
    }
}
