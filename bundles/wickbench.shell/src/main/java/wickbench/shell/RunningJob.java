package wickbench.shell;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import wickbench.api.progress.Progress;
import wickbench.widgets.Job;
import wickbench.widgets.Work;

/** One piece of work, from the pool's thread to the screen. */
final class RunningJob<T> implements Job, Runnable {
    private final String what;
    private final Work<T> work;
    private final Consumer<? super T> done;
    private final Consumer<Exception> failed;
    private final BiConsumer<Runnable, Runnable> screen;
    private final AtomicBoolean cancelled = new AtomicBoolean();
    private final AtomicBoolean ended = new AtomicBoolean();
    private volatile Steps steps = new Steps(0, 0);
    private volatile Runnable atEnd = () -> {};

    /** How far it is; a total of 0 means that nobody knows. */
    record Steps(long done, long total) {}

    RunningJob(
            String what,
            Work<T> work,
            Consumer<? super T> done,
            Consumer<Exception> failed,
            BiConsumer<Runnable, Runnable> screen) {
        this.what = what;
        this.work = work;
        this.done = done;
        this.failed = failed;
        this.screen = screen;
    }

    String what() {
        return what;
    }

    Steps steps() {
        return steps;
    }

    void onEnd(Runnable act) {
        atEnd = act;
    }

    @Override
    public void cancel() {
        cancelled.set(true);
        end();
    }

    @Override
    public boolean running() {
        return !ended.get();
    }

    @Override
    public void run() {
        if (cancelled.get()) {
            return;
        }
        try {
            T result = work.run(progress());
            deliver(() -> done.accept(result));
        } catch (Exception e) {
            deliver(() -> failed.accept(e));
        } catch (Error e) {
            // the person must hear of it too, not only the thread's end
            deliver(() -> failed.accept(new IllegalStateException(e.toString(), e)));
            throw e;
        }
    }

    private Progress progress() {
        return (n, total) -> {
            steps = new Steps(n, total);
            return !cancelled.get();
        };
    }

    private void deliver(Runnable result) {
        screen.accept(
                () -> {
                    if (!cancelled.get()) {
                        result.run();
                    }
                },
                this::end);
    }

    private void end() {
        if (ended.compareAndSet(false, true)) {
            atEnd.run();
        }
    }
}
