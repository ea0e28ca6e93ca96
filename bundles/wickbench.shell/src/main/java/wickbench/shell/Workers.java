package wickbench.shell;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** The threads that do what would be slow on the UI thread; daemons, so that they never keep the program alive. */
final class Workers implements AutoCloseable {
    private static final int THREADS = 4;
    private static final int PATIENCE_SECONDS = 30;
    private final AtomicInteger made = new AtomicInteger();
    private final ExecutorService pool = Executors.newFixedThreadPool(THREADS, this::thread);
    private final ExecutorService writer = Executors.newSingleThreadExecutor(this::thread);
    private final ExecutorService unhurried = Executors.newSingleThreadExecutor(this::unhurriedThread);

    /** Returns those who do any work, in no order. */
    ExecutorService pool() {
        return pool;
    }

    /** Returns the one who writes, piece after piece. */
    ExecutorService writer() {
        return writer;
    }

    /** Returns the one who does what nobody waits for, after all others. */
    ExecutorService unhurried() {
        return unhurried;
    }

    /**
     * Lets what is under way come to its safe point.
     *
     * <p>Nothing is interrupted: an interrupt closes the file that a thread writes to, and that may be the journal.
     */
    @Override
    public void close() {
        pool.shutdown();
        writer.shutdown();
        unhurried.shutdown();
        try {
            pool.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
            writer.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
            unhurried.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Thread unhurriedThread(Runnable work) {
        Thread thread = thread(work);
        thread.setName("desk-check");
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    private Thread thread(Runnable work) {
        Thread thread = new Thread(work, "desk-" + made.incrementAndGet());
        thread.setDaemon(true);
        return thread;
    }
}
