package wickbench.shell;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;

/** A real window on pages given by hand. */
final class OpenDesk implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 60_000;
    private final Display display = new Display();
    private final Workers workers = new Workers();
    private final Session session = new Session(Optional.empty());
    private final Shell shell = new Shell(display);
    private final Supplies supplies;
    private final Window window;

    OpenDesk(Places places) {
        this(places, new Neighbours());
    }

    OpenDesk(Places places, Neighbours neighbours) {
        supplies = new Supplies(
                places,
                neighbours,
                workers,
                session,
                Forgetful.FORGETFUL,
                question -> Optional.empty(),
                Optional.empty());
        window = new Window(shell, supplies, Looks.FIRST, () -> {});
        display.setRuntimeExceptionHandler(window::broken);
        Keys.listen(shell, new WindowKeys(window));
        shell.setSize(1200, 800);
        shell.open();
        shell.forceActive();
        window.start(Optional.empty());
        settle();
    }

    Window window() {
        return window;
    }

    Supplies supplies() {
        return supplies;
    }

    /** Goes to a page and waits until the window has done with it. */
    void show(String page, Optional<String> argument) {
        window.show(page, argument);
        settle();
    }

    Session session() {
        return session;
    }

    OpenPage front() {
        return window.front().orElseThrow();
    }

    /** Handles events until the condition holds; fails when it does not within a minute. */
    void await(BooleanSupplier condition) {
        boolean[] late = {false};
        Runnable alarm = () -> late[0] = true;
        display.timerExec(PATIENCE_MILLIS, alarm);
        EventLoop.until(display, () -> late[0] || condition.getAsBoolean());
        if (late[0]) {
            throw new AssertionError("did not happen within " + PATIENCE_MILLIS + " ms");
        }
        display.timerExec(-1, alarm);
    }

    void settle() {
        while (display.readAndDispatch()) {
            continue;
        }
    }

    /** Presses a key where the focus is. */
    void press(int key, int modifiers) {
        Event event = new Event();
        event.keyCode = key;
        event.character = key < 128 ? (char) key : 0;
        event.stateMask = modifiers;
        Control target = Optional.ofNullable(display.getFocusControl()).orElse(shell);
        target.notifyListeners(SWT.KeyDown, event);
        settle();
    }

    @Override
    public void close() {
        shell.dispose();
        workers.close();
        display.dispose();
    }
}
