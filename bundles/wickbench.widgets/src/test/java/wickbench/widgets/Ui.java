package wickbench.widgets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.json.Json;

/** A real window for a test, with real background work and a memory that lasts as long as the test. */
final class Ui implements Desk, Jobs, Memory, AutoCloseable {
    private static final int PATIENCE_MILLIS = 60_000;
    private final Display display = new Display();
    private final Theme theme = new Theme(display, Palette.ofLight(), new Metrics(100));
    private final Map<String, Json.Obj> memory = new HashMap<>();
    private final List<Thread> threads = new ArrayList<>();
    private final Shell shell = new Shell(display);

    Ui() {
        shell.setLayout(new FillLayout());
        shell.setSize(900, 600);
    }

    Shell shell() {
        return shell;
    }

    Ui open() {
        shell.open();
        shell.forceActive();
        settle();
        return this;
    }

    /** Handles events until the condition holds; fails when it does not within a minute. */
    void await(BooleanSupplier condition) {
        boolean[] late = {false};
        Runnable alarm = () -> late[0] = true;
        display.timerExec(PATIENCE_MILLIS, alarm);
        while (!condition.getAsBoolean()) {
            if (late[0]) {
                throw new AssertionError("did not happen within " + PATIENCE_MILLIS + " ms");
            }
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        display.timerExec(-1, alarm);
    }

    /** Handles everything that waits. */
    void settle() {
        while (display.readAndDispatch()) {
            continue;
        }
    }

    /** Presses a key on a control, as the toolkit tells of it. */
    void press(Control control, int key, char character, int modifiers) {
        Event event = new Event();
        event.keyCode = key;
        event.character = character;
        event.stateMask = modifiers;
        control.notifyListeners(SWT.KeyDown, event);
        settle();
    }

    void press(Control control, char letter) {
        press(control, Character.toLowerCase(letter), letter, SWT.NONE);
    }

    @Override
    public Theme theme() {
        return theme;
    }

    @Override
    public Jobs jobs() {
        return this;
    }

    @Override
    public Memory memory() {
        return this;
    }

    @Override
    public FileChoice files() {
        return question -> Optional.empty();
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done) {
        return run(what, work, done, e -> {
            throw new AssertionError(what, e);
        });
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done, Consumer<Exception> failed) {
        CompletableFuture<Void> future = new CompletableFuture<>();
        Thread thread = new Thread(() -> {
            try {
                T result = work.run((n, total) -> !future.isCancelled());
                display.asyncExec(() -> deliver(future, () -> done.accept(result)));
            } catch (Exception e) {
                display.asyncExec(() -> deliver(future, () -> failed.accept(e)));
            } catch (Error e) {
                // the test must hear of it too, not only the thread's end
                display.asyncExec(() ->
                        deliver(future, () -> failed.accept(new IllegalStateException(e.toString(), e))));
                throw e;
            }
        });
        threads.add(thread);
        thread.start();
        return new Job() {
            @Override
            public void cancel() {
                future.cancel(false);
            }

            @Override
            public boolean running() {
                return !future.isDone();
            }
        };
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static void deliver(CompletableFuture<Void> future, Runnable result) {
        if (!future.isCancelled()) {
            result.run();
            future.complete(null);
        }
    }

    @Override
    public Optional<Json.Obj> recall(String key) {
        return Optional.ofNullable(memory.get(key));
    }

    @Override
    public void keep(String key, Json.Obj value) {
        memory.put(key, value);
    }

    @Override
    public void forget(String key) {
        memory.remove(key);
    }

    @Override
    public void close() {
        threads.forEach(Ui::join);
        theme.dispose();
        display.dispose();
    }
}
