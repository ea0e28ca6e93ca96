package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/** Every bit of a closed journal flipped, one at a time: each is found, and the entry named. */
@Tag("long")
class BitFlipTest {
    private static final int NOTES = 2;

    /** A broken link to the entry before the last: nothing tells which of the two was changed. */
    private static final int CLOSEST = 2;

    @TempDir
    Path folder;

    @Test
    void a_flipped_bit_of_an_entry_is_found_and_its_entry_named() throws IOException {
        Recorded.closed(folder, NOTES);
        Path file = Recorded.files(folder).segment(0);
        byte[] bytes = Files.readAllBytes(file);
        int place = 0;
        for (int at = 0; at < bytes.length; at++) {
            for (int bit = 0; bit < Byte.SIZE; bit++) {
                List<Verification.Broken> findings = flipped(file, bytes, at, bit);
                assertThat(findings)
                        .as("byte %d bit %d of entry %d", at, bit, place)
                        .isNotEmpty();
                assertThat(names(findings.get(0).where(), place))
                        .as("%s for %d", findings, place)
                        .isTrue();
            }
            place += bytes[at] == '\n' ? 1 : 0;
        }
        assertThat(place).isEqualTo(NOTES + 1);
    }

    @Test
    void a_flipped_bit_of_the_checkpoints_is_found_and_its_file_named() throws IOException {
        Recorded.closed(folder, 2);
        for (Path file : List.of(
                Recorded.files(folder).checkpoints(),
                Recorded.files(folder).note(),
                new Layout(folder).key(Recorded.STATION))) {
            byte[] bytes = Files.readAllBytes(file);
            for (int at = 0; at < bytes.length; at++) {
                for (int bit = 0; bit < Byte.SIZE; bit++) {
                    List<Verification.Broken> findings = flipped(file, bytes, at, bit);
                    if (!file.toString().endsWith(".pem")) {
                        assertThat(findings)
                                .as("byte %d bit %d of %s", at, bit, file)
                                .isNotEmpty();
                        assertThat(findings.get(0).where())
                                .startsWith(file.getFileName().toString());
                    }
                }
            }
        }
    }

    /** PEM allows several ways to break lines, so a flip there may leave the same key. */
    private static void keyIsTheSameOrNamed(Path file, List<Verification.Broken> findings) throws IOException {
        if (findings.isEmpty()) {
            assertThat(StationKey.parse(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)))
                    .isPresent();
        } else {
            assertThat(findings.get(0).code()).isEqualTo("key");
        }
    }

    /** Flips a bit in place, verifies, and flips it back. */
    private List<Verification.Broken> flipped(Path file, byte[] bytes, int at, int bit) throws IOException {
        put(file, at, bytes[at] ^ 1 << bit);
        StationFolder files = Recorded.files(folder);
        Verifier.Bounds bounds = Verifier.Bounds.of(files, Optional.empty());
        List<Verification.Broken> findings = new Verifier(new Layout(folder), files, bounds, Progress.NONE)
                .run()
                .findings();
        if (file.toString().endsWith(".pem")) {
            keyIsTheSameOrNamed(file, findings);
        }
        put(file, at, bytes[at]);
        return findings;
    }

    private static void put(Path file, int at, int value) throws IOException {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            open.seek(at);
            open.write(value);
        }
    }

    private static boolean names(String where, int place) {
        String[] range = where.substring(where.indexOf(':') + 1).split("-");
        int first = Integer.parseInt(range[0]);
        int last = Integer.parseInt(range[range.length - 1]);
        return first <= place && place <= last && last - first < CLOSEST;
    }
}
