package wickbench.testing.ui.access;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;

/** The display of another thread: work done on it, and keys that go through it. */
record Posted(Thread window) {
    private static final int UNHEARD_MILLIS = 400;
    private static final int LOOK_AGAIN_MILLIS = 10;

    <T> T on(Supplier<T> work) {
        List<T> done = new ArrayList<>(1);
        Display.findDisplay(window).syncExec(() -> done.add(work.get()));
        return done.get(0);
    }

    void run(Runnable work) {
        Display.findDisplay(window).syncExec(work);
    }

    /** Returns the window in front. Call it on the display's thread. */
    Shell front() {
        return Stream.of(Display.getCurrent().getShells())
                .filter(shell ->
                        shell.isVisible() && Stream.of(shell.getShells()).noneMatch(Shell::isVisible))
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    /** Presses a key and goes on when its end was seen; one that goes to no control of ours is waited for no longer. */
    void key(char letter, int code, int with) {
        Display display = Display.findDisplay(window);
        boolean[] heard = new boolean[1];
        Listener listener = event -> heard[0] = true;
        display.syncExec(() -> {
            display.addFilter(SWT.KeyUp, listener);
            if (with != 0) {
                display.post(key(SWT.KeyDown, (char) 0, with));
            }
            display.post(key(SWT.KeyDown, letter, code));
            display.post(key(SWT.KeyUp, letter, code));
            if (with != 0) {
                display.post(key(SWT.KeyUp, (char) 0, with));
            }
        });
        long end = System.nanoTime() + UNHEARD_MILLIS * 1_000_000L;
        while (!on(() -> heard[0]) && System.nanoTime() < end) {
            rest(LOOK_AGAIN_MILLIS);
        }
        run(() -> display.removeFilter(SWT.KeyUp, listener));
    }

    static void rest(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Event key(int type, char letter, int code) {
        Event event = new Event();
        event.type = type;
        event.character = letter;
        event.keyCode = code;
        return event;
    }
}
