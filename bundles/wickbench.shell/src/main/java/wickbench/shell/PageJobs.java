package wickbench.shell;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;
import wickbench.widgets.Job;
import wickbench.widgets.Jobs;
import wickbench.widgets.Work;

/** The jobs of one owner, a page or the window itself; nothing is delivered once the owner is gone. */
final class PageJobs implements Jobs {
    private final Display display;
    private final Executor pool;
    private final BooleanSupplier alive;
    private final JobBoard board;
    private final Consumer<Exception> failed;
    private final Set<RunningJob<?>> running = ConcurrentHashMap.newKeySet();

    PageJobs(Display display, Executor pool, BooleanSupplier alive, JobBoard board, Consumer<Exception> failed) {
        this.display = display;
        this.pool = pool;
        this.alive = alive;
        this.board = board;
        this.failed = failed;
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done) {
        return run(what, work, done, failed);
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done, Consumer<Exception> whenFailed) {
        return begin(new RunningJob<>(what, work, done, whenFailed, this::onScreen), board::started);
    }

    /** Runs work that nobody waits for. */
    <T> Job runUnasked(String what, Work<T> work, Consumer<? super T> done) {
        return begin(new RunningJob<>(what, work, done, failed, this::onScreen), board::startedUnasked);
    }

    private Job begin(RunningJob<?> job, Consumer<RunningJob<?>> tell) {
        running.add(job);
        tell.accept(job);
        job.onEnd(() -> {
            running.remove(job);
            board.ended(job);
        });
        pool.execute(job);
        return job;
    }

    /** Tells whether nothing is under way. */
    boolean idle() {
        return running.isEmpty();
    }

    void cancelAll() {
        running.forEach(Job::cancel);
    }

    /** Runs on the UI thread if the owner still lives; else only what must happen anyway. */
    private void onScreen(Runnable deliver, Runnable anyway) {
        try {
            display.asyncExec(() -> {
                try {
                    if (alive.getAsBoolean()) {
                        deliver.run();
                    }
                } finally {
                    anyway.run();
                }
            });
        } catch (SWTException gone) {
            // the window closed while this was under way: there is nobody left to tell
            if (gone.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw gone;
            }
            anyway.run();
        }
    }
}
