package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Verification.Broken;
import wickbench.api.progress.Progress;
import wickbench.proof.TreeHash;
import wickbench.testing.Meets;

/**
 * Each bit of the entries of a closed journal of 1,000 flipped, one at a time: every flip is found, and the entry named.
 *
 * <p>What verify does with lines (leaf hash, form, chain, finding) does not depend on lines long past, so each flip is shown to the
 * same code with the line before and the lines behind only, in memory. That this is what the whole verify of the files finds is
 * held for one flip of so many, and for all flips of the last lines, which only the checkpoint vouches for.
 */
@Tag("long")
class ThousandFlipsTest {
    private static final int ENTRIES = 1_000;
    /** Lines behind the flipped one until what was changed is settled. */
    private static final int BEHIND = 3;

    private static final int WHOLE_EACH = 4_001;

    @TempDir
    Path folder;

    private Path file;
    private byte[] bytes;
    private int[] starts;

    @BeforeEach
    void close_a_journal() throws IOException {
        Recorded.closed(folder, ENTRIES - 1);
        file = Recorded.files(folder).segment(0);
        bytes = Files.readAllBytes(file);
        starts = IntStream.concat(
                        IntStream.of(0),
                        IntStream.range(0, bytes.length)
                                .filter(at -> bytes[at] == '\n')
                                .map(at -> at + 1))
                .toArray();
    }

    @Test
    @Meets({"21 CFR 117.305(c)", "EU GMP Annex 11 7.1"})
    void every_flip_is_found_and_its_entry_named() {
        LongAdder flips = new LongAdder();
        IntStream.range(0, ENTRIES - BEHIND).parallel().forEach(place -> {
            for (int at = starts[place]; at < starts[place + 1]; at++) {
                for (int bit = 0; bit < Byte.SIZE; bit++) {
                    List<Broken> found = beside(place, at, bit);
                    assertThat(found)
                            .as("byte %d bit %d of entry %d", at, bit, place)
                            .isNotEmpty();
                    if (!names(found.get(0), place)) {
                        throw new AssertionError(place + " is not named by " + found);
                    }
                    flips.increment();
                }
            }
        });
        assertThat(flips.sum()).isEqualTo(8L * starts[ENTRIES - BEHIND]);
    }

    @Test
    void the_whole_verify_finds_what_the_lines_beside_a_flip_show() throws IOException {
        for (long flip = 0; flip < 8L * starts[ENTRIES - BEHIND]; flip += WHOLE_EACH) {
            int at = (int) (flip / 8);
            int bit = (int) (flip % 8);
            int place = place(at);
            // of the first entry the whole verify says more: that the key it names cannot be known
            assertThat(whole(at, bit))
                    .filteredOn(found -> !found.code().equals("first.missing"))
                    .first()
                    .isEqualTo(beside(place, at, bit).get(0));
        }
    }

    @Test
    void every_flip_of_the_last_lines_is_found_by_the_whole_verify() throws IOException {
        for (int at = starts[ENTRIES - BEHIND]; at < bytes.length; at++) {
            for (int bit = 0; bit < Byte.SIZE; bit++) {
                List<Broken> found = whole(at, bit);
                assertThat(found).as("byte %d bit %d", at, bit).isNotEmpty();
                assertThat(names(found.get(0), place(at)))
                        .as("%s for %d", found, place(at))
                        .isTrue();
            }
        }
    }

    private int place(int at) {
        int found = Arrays.binarySearch(starts, at);
        return found >= 0 ? found : -found - 2;
    }

    /** Shows the flipped line, and those behind it, to what verify shows all lines to. */
    private List<Broken> beside(int place, int at, int bit) {
        TreeHash hash = new TreeHash();
        byte[] before = place == 0
                ? Kept.NOTHING.leaf().bytes()
                : hash.leaf(bytes, starts[place - 1], starts[place] - 1 - starts[place - 1]);
        byte[] window = Arrays.copyOfRange(bytes, starts[place], starts[place + 1 + BEHIND - 1]);
        window[at - starts[place]] ^= (byte) (1 << bit);
        Findings findings = new Findings(Recorded.STATION);
        ChainCheck chain = new ChainCheck(Recorded.STATION, ENTRIES, findings, place, before);
        try (Lines lines = new Lines(window)) {
            while (lines.next()) {
                chain.line(lines, hash.leaf(lines.buffer(), lines.from(), lines.length()));
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return findings.all();
    }

    /** Flips a bit of the file, verifies all of it, and flips the bit back. */
    private List<Broken> whole(int at, int bit) throws IOException {
        put(at, bytes[at] ^ 1 << bit);
        StationFolder files = Recorded.files(folder);
        List<Broken> found = new Verifier(
                        new Layout(folder), files, Verifier.Bounds.of(files, Optional.empty()), Progress.NONE)
                .run()
                .findings();
        put(at, bytes[at]);
        return found;
    }

    private void put(int at, int value) throws IOException {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            open.seek(at);
            open.write(value);
        }
    }

    /** Tells whether a finding names the entry, alone or with the one beside it. */
    static boolean names(Broken found, int place) {
        String[] range = found.where().substring(found.where().indexOf(':') + 1).split("-");
        int first = Integer.parseInt(range[0]);
        int last = Integer.parseInt(range[range.length - 1]);
        boolean close = last - first < 2 || found.text().contains("entry " + place + " alone was changed");
        return first <= place && place <= last && close;
    }
}
