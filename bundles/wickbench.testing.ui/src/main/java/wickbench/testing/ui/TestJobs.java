package wickbench.testing.ui;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;
import wickbench.widgets.Job;
import wickbench.widgets.Jobs;
import wickbench.widgets.Work;

/** Real background work whose results come back to the window's thread as long as there is a window. */
final class TestJobs implements Jobs, AutoCloseable {
    private static final int PATIENCE_SECONDS = 20;
    private final ExecutorService workers = Executors.newFixedThreadPool(2);
    private final Shell shell;
    private final Consumer<String> failures;
    private final List<String> told = new CopyOnWriteArrayList<>();

    TestJobs(Shell shell, Consumer<String> failures) {
        this.shell = shell;
        this.failures = failures;
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done) {
        return run(what, work, done, failure -> failures.accept(failure.toString()));
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done, Consumer<Exception> failed) {
        Started job = new Started(what);
        workers.execute(() -> {
            try {
                T result = work.run(job::goOn);
                deliver(job, () -> done.accept(result));
            } catch (Exception e) {
                deliver(job, () -> failed.accept(e));
            } catch (Error e) {
                // the test must hear of it too, not only the worker's end
                deliver(job, () -> failed.accept(new IllegalStateException(e.toString(), e)));
                throw e;
            }
        });
        return job;
    }

    /** Returns how far the work said that it was: what is done, so many of so many. */
    List<String> told() {
        return told;
    }

    private void deliver(Started job, Runnable result) {
        shell.getDisplay().asyncExec(() -> {
            job.running = false;
            if (!job.cancelled && !shell.isDisposed()) {
                result.run();
            }
        });
    }

    /** Waits for what still runs: its result would find no window. */
    @Override
    public void close() {
        workers.shutdown();
        try {
            if (!workers.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new AssertionError("work still runs after " + PATIENCE_SECONDS + " s");
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private final class Started implements Job {
        /** Touched by the window's thread only. */
        private boolean running = true;

        private final String what;
        private volatile boolean cancelled;

        private Started(String what) {
            this.what = what;
        }

        private boolean goOn(long done, long total) {
            told.add(what + ": " + done + " of " + total);
            return !cancelled;
        }

        @Override
        public void cancel() {
            cancelled = true;
        }

        @Override
        public boolean running() {
            return running;
        }
    }
}
