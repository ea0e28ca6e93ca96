package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.index.Rows;
import wickbench.api.progress.Progress;

/** Several threads at one index. */
class SharedReadTest {
    private static final Tallies TALLIES = Tallies.named("tallies");

    @TempDir
    Path folder;

    private TestHome home;

    @BeforeEach
    void open() {
        home = TestHome.in(folder);
        home.views(TALLIES);
        home.journal().append(Said.many("seen", 3));
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void aLongReadSeesOneMomentAndHoldsNobodyUp() throws Exception {
        CountDownLatch looked = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        CompletableFuture<String> slow = Threads.started(() -> home.index().read("tallies", rows -> {
            long before = times(rows);
            looked.countDown();
            await(goOn);
            return before + " " + times(rows);
        }));
        await(looked);
        home.journal().append(Said.many("seen", 4));
        assertThat(Threads.answerOf(() -> TALLIES.times(home.index(), "seen"))).isEqualTo(7);
        goOn.countDown();
        assertThat(slow.join()).isEqualTo("3 3");
    }

    @Test
    void aReadWithinAReadIsAnswered() {
        long found = home.index().read("tallies", rows -> TALLIES.times(home.index(), "seen"));
        assertThat(found).isEqualTo(3);
    }

    @Test
    void anInterruptedReaderLeavesTheFileOpenForOthers() {
        home.journal().append(Said.many("faint", 5000));
        home.index().catchUp(Progress.NONE);
        home.reopen();
        Threads.started(() -> {
                    Thread.currentThread().interrupt();
                    return Dump.of(home.index(), EntryIds.NAME);
                })
                .handle((answer, failure) -> 0)
                .join();
        assertThat(TALLIES.times(home.index(), "faint")).isEqualTo(5000);
        assertThat(home.index().notices()).isEmpty();
    }

    private static long times(Rows rows) {
        return rows.first("select times from tally where word = 'seen'", row -> row.whole("times"))
                .orElseThrow();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
