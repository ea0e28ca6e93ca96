package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.index.ViewState;
import wickbench.api.progress.Progress;

/** A program with a new version of a view is killed while it makes the tables anew: what is read next is whole, by old or new. */
class KilledUpgradeTest {
    private static final int KILLS = 20;
    private static final int ENTRIES = 4_000;

    @TempDir
    Path folder;

    @Test
    void anUpgradeKilledHalfWayLeavesWholeTables() throws Exception {
        List<String> right;
        try (TestHome home = TestHome.in(folder)) {
            home.views(KilledIndex.view(1));
            home.journal().append(Said.many("seen", ENTRIES));
            right = Dump.of(home.index(), "tallies", EntryIds.NAME);
        }
        byte[] journal = Files.readAllBytes(folder.resolve("journal/station-1/entries-000000.jsonl"));
        Random chance = new Random(42);
        for (int version = 2; version < 2 + KILLS; version++) {
            killedUpgrade(version, chance);
            // every other time the older program comes back
            int next = version - chance.nextInt(2);
            try (TestHome home = TestHome.in(folder)) {
                home.views(KilledIndex.view(next));
                assertThat(Dump.of(home.index(), "tallies", EntryIds.NAME)).isEqualTo(right);
                assertThat(home.index().views()).allMatch(KilledUpgradeTest::whole);
                assertThat(home.index().verify(Progress.NONE).holds()).isTrue();
            }
        }
        assertThat(Files.readAllBytes(folder.resolve("journal/station-1/entries-000000.jsonl")))
                .isEqualTo(journal);
    }

    private static boolean whole(ViewState view) {
        return view.taken() == ENTRIES + 1 && view.failure().isEmpty();
    }

    private void killedUpgrade(int version, Random chance) throws IOException, InterruptedException {
        Process upgrade = KilledIndex.start(folder, version);
        try (BufferedReader said = upgrade.inputReader()) {
            assertThat(said.readLine()).isEqualTo("open");
            Thread.sleep(chance.nextInt(700));
            upgrade.toHandle().destroyForcibly();
            upgrade.waitFor();
        }
    }
}
