package wickbench.index;

import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Pieces that a thread of its own makes while this one takes those that came before, in order and never many ahead.
 *
 * <p>What either throws ends both, and nothing is left running. Waits that an interrupt does not end: half a transaction helps
 * nobody.
 */
final class Ahead<T> {
    /** More would only fill the memory: whoever is the slower sets the pace. */
    private static final int WAITING = 1;

    private final Semaphore room = new Semaphore(WAITING);
    private final Semaphore there = new Semaphore(0);
    private final Queue<T> made = new ConcurrentLinkedQueue<>();
    private volatile boolean enough;

    private Ahead() {}

    /**
     * Takes pieces on this thread until there are no more or there are enough.
     *
     * @param name of the thread that makes them
     * @param maker is given where to put each piece, and hears false when no more are wanted
     * @param taker returns false when it has enough
     */
    static <T> void run(String name, Consumer<Predicate<T>> maker, Predicate<T> taker) {
        Ahead<T> ahead = new Ahead<>();
        CompletableFuture<Void> making = CompletableFuture.runAsync(() -> ahead.make(maker), work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            thread.start();
        });
        try {
            ahead.take(taker);
        } finally {
            ahead.stop();
            making.handle((nothing, failure) -> nothing).join();
        }
        try {
            making.join();
        } catch (CompletionException e) {
            throw unwrapped(e);
        }
    }

    private void make(Consumer<Predicate<T>> maker) {
        try {
            maker.accept(this::put);
        } finally {
            there.release();
        }
    }

    private boolean put(T piece) {
        room.acquireUninterruptibly();
        made.add(piece);
        there.release();
        return !enough;
    }

    private void take(Predicate<T> taker) {
        boolean more = true;
        while (more) {
            there.acquireUninterruptibly();
            T piece = made.poll();
            // nothing is there although somebody said so: that was the end
            more = piece != null && taker.test(piece);
            room.release();
        }
    }

    private void stop() {
        enough = true;
        room.release();
    }

    private static RuntimeException unwrapped(CompletionException e) {
        if (e.getCause() instanceof Error error) {
            throw error;
        }
        return e.getCause() instanceof RuntimeException failure ? failure : e;
    }
}
