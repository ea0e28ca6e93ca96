package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** One thread makes what another takes: in order, bounded, and whatever goes wrong is told to whoever asked. */
@Timeout(30)
class AheadTest {
    private static final String NAME = "made-ahead";

    private final List<Integer> taken = new ArrayList<>();
    private final AtomicInteger made = new AtomicInteger();

    /** A thread that has done all it had to do may still need a moment to end. */
    @AfterEach
    void nothingIsLeftRunning() throws InterruptedException {
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals(NAME)) {
                thread.join(10_000);
                assertThat(thread.isAlive()).isFalse();
            }
        }
    }

    @Test
    void allIsTakenInOrderAndNeverMuchIsMadeBeforehand() {
        Ahead.run(NAME, count(1000), piece -> {
            taken.add(piece);
            // one is taken, one waits, and one is about to be put there
            assertThat(made.get() - piece).isLessThanOrEqualTo(3);
            return true;
        });
        assertThat(taken).isEqualTo(IntStream.range(0, 1000).boxed().toList());
    }

    @Test
    void nothingMayBeMade() {
        Ahead.run(NAME, count(0), taken::add);
        assertThat(taken).isEmpty();
    }

    @Test
    void whoHasEnoughIsGivenNoMore() {
        Ahead.run(NAME, count(1000), piece -> {
            taken.add(piece);
            return piece < 9;
        });
        assertThat(taken).hasSize(10);
        assertThat(made.get()).isLessThanOrEqualTo(13);
    }

    @Test
    void whatFailsWhileItIsMadeIsThrownOnceAllBeforeItIsTaken() {
        Consumer<Predicate<Integer>> failing = put -> {
            count(5).accept(put);
            throw new IllegalStateException("no more can be read");
        };
        assertThatThrownBy(() -> Ahead.run(NAME, failing, taken::add))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no more can be read");
        assertThat(taken).containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void anErrorIsNoLessThanAFailure() {
        Consumer<Predicate<Integer>> failing = put -> {
            throw new OutOfMemoryError("here");
        };
        assertThatThrownBy(() -> Ahead.run(NAME, failing, taken::add))
                .isInstanceOf(OutOfMemoryError.class)
                .hasMessage("here");
    }

    @Test
    void whatFailsWhileItIsTakenIsThrownAndNoMoreIsMade() {
        assertThatThrownBy(() -> Ahead.run(NAME, count(1000), piece -> {
                    throw new IllegalStateException("cannot take " + piece);
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("cannot take 0");
        assertThat(made.get()).isLessThanOrEqualTo(4);
    }

    @Test
    void anInterruptIsKeptForLater() {
        Thread.currentThread().interrupt();
        Ahead.run(NAME, count(100), taken::add);
        assertThat(Thread.interrupted()).isTrue();
        assertThat(taken).hasSize(100);
    }

    /** Makes so many numbers, until no more are wanted. */
    private Consumer<Predicate<Integer>> count(int pieces) {
        return put -> {
            boolean wanted = true;
            for (int piece = 0; wanted && piece < pieces; piece++) {
                made.incrementAndGet();
                wanted = put.test(piece);
            }
        };
    }
}
