package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

/** A recording program is killed 200 times, at any moment of its life: nothing that it acknowledged is lost. */
@Tag("long")
class KillsTest {
    private static final int HOMES = 2;
    private static final int KILLS = 100;

    @TempDir
    Path folder;

    @Test
    @Meets("ALCOA+ enduring")
    void no_acknowledged_entry_is_lost_when_the_program_is_killed() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(HOMES);
        List<Future<Long>> killed = both.invokeAll(List.of(recorders("one", 1), recorders("two", 2)));
        for (Future<Long> each : killed) {
            assertThat(each.get()).isPositive();
        }
        both.shutdown();
    }

    /** Kills one recorder after another; each goes on where the one before died. */
    private Callable<Long> recorders(String name, int seed) {
        return () -> {
            Path home = folder.resolve(name);
            Random chance = new Random(seed);
            long acknowledged = 0;
            for (int kill = 0; kill < KILLS; kill++) {
                acknowledged = Math.max(acknowledged, killed(home, chance));
                acknowledged = holds(home, acknowledged);
            }
            return acknowledged;
        };
    }

    /** Kills a recorder at any moment; returns the last size that it acknowledged. */
    private static long killed(Path home, Random chance) throws IOException, InterruptedException {
        Process recorder = KilledRecorder.start(home, "record");
        try (BufferedReader said = recorder.inputReader()) {
            // every fourth at any moment from its start on, the next from when it holds the home, the others while it
            // records
            for (int lines = chance.nextInt(4); lines > 0; lines--) {
                assertThat(said.readLine()).isNotNull();
            }
            Thread.sleep(chance.nextInt(80));
            // through its handle, which leaves what it said to be read
            recorder.toHandle().destroyForcibly();
            List<String> all = said.lines().toList();
            recorder.waitFor();
            return all.stream()
                    .filter(line -> line.matches("[0-9]+"))
                    .mapToLong(Long::parseLong)
                    .reduce(0, Math::max);
        }
    }

    /** Opens the home, which must hold as many entries and no half ones, and returns how many. */
    private static long holds(Path home, long acknowledged) {
        try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
            long size = journal.size(Recorded.STATION);
            assertThat(size).isGreaterThanOrEqualTo(acknowledged);
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
            List<UUID> ids =
                    Recorded.entries(journal).stream().map(Entry::id).distinct().toList();
            assertThat(ids).hasSize((int) size);
            return size;
        }
    }
}
