package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.progress.Progress;

/** Bits of the index file flipped while no program has it open: what is read from it is right, or made again first. */
class FlippedPagesTest {
    private static final Tallies TALLIES = Tallies.named("tallies");
    private static final int FLIPS = 10_000;
    /** Flips of one file; few enough that most files are still read up to the flips, and not thrown away at the first block. */
    private static final int ROUNDS = 400;

    @TempDir
    Path folder;

    @Test
    void noWrongRowIsEverRead() throws IOException {
        List<String> right;
        Path file;
        try (TestHome home = TestHome.in(folder.resolve("home"))) {
            home.views(TALLIES);
            home.journal().append(Said.many("seen", 700));
            home.journal().append(Said.many("faint", 90));
            right = Dump.of(home.index(), "tallies", EntryIds.NAME);
            file = home.file();
        }
        Path sums = Path.of(file + ".sums");
        byte[] whole = Files.readAllBytes(file);
        Path keptSums = Files.copy(sums, folder.resolve("sums"));
        SplittableRandom chance = new SplittableRandom(8);
        int mended = 0;
        try (TestHome home = TestHome.in(folder.resolve("home"))) {
            home.views(TALLIES);
            for (int round = 0; round < ROUNDS; round++) {
                home.closeIndex();
                Files.write(file, flipped(whole, chance));
                Files.copy(keptSums, sums, StandardCopyOption.REPLACE_EXISTING);
                home.reopenIndex();
                home.index().catchUp(Progress.NONE);
                List<String> read = Dump.of(home.index(), "tallies", EntryIds.NAME);
                assertThat(read.equals(right))
                        .as("round %d: %s", round, home.index().notices())
                        .isTrue();
                mended += home.index().notices().isEmpty() ? 0 : 1;
            }
        }
        assertThat(mended).isPositive();
    }

    private static byte[] flipped(byte[] whole, SplittableRandom chance) {
        byte[] bytes = whole.clone();
        for (int flip = 0; flip < FLIPS / ROUNDS; flip++) {
            bytes[chance.nextInt(bytes.length)] ^= (byte) (1 << chance.nextInt(8));
        }
        return bytes;
    }
}
