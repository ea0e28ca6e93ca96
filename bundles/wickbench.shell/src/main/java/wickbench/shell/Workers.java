package wickbench.shell;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** The threads that do what would be slow on the UI thread; daemons, so that they never keep the program alive. */
final class Workers implements AutoCloseable {
    private static final int THREADS = 4;
    private final AtomicInteger made = new AtomicInteger();
    private final ExecutorService pool = Executors.newFixedThreadPool(THREADS, this::thread);
    private final ExecutorService writer = Executors.newSingleThreadExecutor(this::thread);

    /** Returns those who do any work, in no order. */
    ExecutorService pool() {
        return pool;
    }

    /** Returns the one who writes, piece after piece. */
    ExecutorService writer() {
        return writer;
    }

    /** Lets the writer finish; everything else is given up. */
    @Override
    public void close() {
        pool.shutdownNow();
        writer.shutdown();
        try {
            writer.awaitTermination(5, java.util.concurrent.TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Thread thread(Runnable work) {
        Thread thread = new Thread(work, "desk-" + made.incrementAndGet());
        thread.setDaemon(true);
        return thread;
    }
}
