package wickbench.journal;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;

/** Calls for a checkpoint once nothing was appended for a second. */
final class QuietSeal implements AutoCloseable {
    private static final long QUIET_MS = 1_000;
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "wickbench-journal-seal");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicBoolean waiting = new AtomicBoolean();
    private final AtomicLong appends = new AtomicLong();
    private final Runnable seal;

    QuietSeal(Runnable seal) {
        this.seal = seal;
    }

    /** Hears of an append; costs next to nothing while one was heard of within the last second. */
    void touched() {
        appends.incrementAndGet();
        if (waiting.compareAndSet(false, true)) {
            lookAgain();
        }
    }

    private void lookAgain() {
        long seen = appends.get();
        timer.schedule(() -> look(seen), QUIET_MS, TimeUnit.MILLISECONDS);
    }

    private void look(long seen) {
        if (appends.get() != seen) {
            lookAgain();
            return;
        }
        waiting.set(false);
        seal.run();
    }

    @Override
    public void close() {
        timer.shutdownNow();
    }
}
