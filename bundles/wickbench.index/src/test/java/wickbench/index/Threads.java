package wickbench.index;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Work on a thread of its own. */
final class Threads {
    private Threads() {}

    static <T> T answerOf(Supplier<T> work) {
        return started(work).orTimeout(30, TimeUnit.SECONDS).join();
    }

    static <T> CompletableFuture<T> started(Supplier<T> work) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Thread thread = new Thread(() -> {
            try {
                answer.complete(work.get());
            } catch (RuntimeException | Error e) {
                answer.completeExceptionally(e);
            }
        });
        thread.setDaemon(true);
        thread.start();
        return answer;
    }
}
