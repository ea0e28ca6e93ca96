package wickbench.bench.ui;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

/**
 * Lets a key that is held down act once: a glove that rests on a key answers no line and starts no strip.
 *
 * <p>In fields, letters and editing keys repeat as they do everywhere.
 */
final class HeldKeys {
    /** A keyboard repeats sooner than this; a key whose release went to another window is free again after it. */
    private static final long LONGEST_REPEAT_NANOS = 1_200_000_000L;

    private final Composite page;
    private final Map<Told, Long> down = new HashMap<>();

    /** One press tells of itself twice: as a wish to go on, and as a key. */
    private record Told(int type, int key) {}

    private HeldKeys(Composite page) {
        this.page = page;
    }

    static void watch(Composite page) {
        HeldKeys held = new HeldKeys(page);
        Listener press = held::press;
        Listener release = held::release;
        Display display = page.getDisplay();
        display.addFilter(SWT.Traverse, press);
        display.addFilter(SWT.KeyDown, press);
        display.addFilter(SWT.KeyUp, release);
        page.addListener(SWT.Dispose, event -> {
            display.removeFilter(SWT.Traverse, press);
            display.removeFilter(SWT.KeyDown, press);
            display.removeFilter(SWT.KeyUp, release);
        });
    }

    private void press(Event event) {
        if (!page.isVisible() || !(event.widget instanceof Control at) || at.getShell() != page.getShell()) {
            return;
        }
        int key = key(event);
        long now = System.nanoTime();
        boolean repeats = Optional.ofNullable(down.put(new Told(event.type, key), now))
                .filter(last -> now - last < LONGEST_REPEAT_NANOS)
                .isPresent();
        if (repeats && !editing(at, key)) {
            event.doit = false;
            event.type = SWT.None;
        }
    }

    private static boolean editing(Control at, int key) {
        boolean enter = key == SWT.CR || key == SWT.KEYPAD_CR || key == SWT.LF;
        boolean function = key >= SWT.F1 && key <= SWT.F20;
        return at instanceof Text && !enter && !function || key == SWT.TAB;
    }

    private void release(Event event) {
        down.keySet().removeIf(told -> told.key() == key(event));
    }

    private static int key(Event event) {
        return event.keyCode == 0 ? event.character : event.keyCode;
    }
}
