package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the shared folder holds of another station: all that was signed, a part of it, or something else. */
class StretchTest {
    private static final int NOTES = 5;

    @TempDir
    Path folder;

    private StationFolder there;
    private Station here;
    private Seal seal;
    private Path lines;

    @BeforeEach
    void record() throws IOException {
        Recorded.closed(folder, NOTES);
        there = Recorded.files(folder);
        lines = there.segment(0);
        Founded founded = Beginning.of(there).founded().orElseThrow();
        here = new Station(there, founded, Opened.nothing(founded));
        byte[] newest = Ending.of(there.checkpoints(), Long.MAX_VALUE).line().orElseThrow();
        seal = Seal.parse(new String(newest, StandardCharsets.UTF_8)).orElseThrow();
    }

    private Stretch read() throws IOException {
        return Stretch.read(there, here, seal);
    }

    private void becomes(byte... bytes) throws IOException {
        Files.write(lines, bytes);
    }

    @Test
    void all_that_was_signed_fits() throws IOException {
        Stretch all = read();
        assertThat(all.fits(seal)).isTrue();
        assertThat(all.contradicts(seal)).isFalse();
        assertThat(all.entries()).hasSize(NOTES + 1);
        assertThat(Stretch.whole(there, here.founded(), seal)).isTrue();
    }

    @Test
    void a_part_waits_and_contradicts_nothing() throws IOException {
        byte[] all = Files.readAllBytes(lines);
        becomes(java.util.Arrays.copyOf(all, all.length - 10));
        assertThat(read().fits(seal)).isFalse();
        assertThat(read().contradicts(seal)).isFalse();
        assertThat(read().entries()).hasSize(NOTES);
    }

    @Test
    void a_folder_without_lines_waits() throws IOException {
        Files.delete(lines);
        assertThat(read().fits(seal)).isFalse();
        assertThat(read().contradicts(seal)).isFalse();
        assertThat(read().entries()).isEmpty();
    }

    @Test
    void what_a_sync_program_has_not_filled_in_yet_waits() throws IOException {
        byte[] all = Files.readAllBytes(lines);
        int last =
                String.join("\n", Files.readAllLines(lines).subList(0, NOTES)).getBytes(StandardCharsets.UTF_8).length;
        java.util.Arrays.fill(all, last + 5, all.length - 1, (byte) 0);
        becomes(all);
        assertThat(read().fits(seal)).isFalse();
        assertThat(read().contradicts(seal)).isFalse();
    }

    @Test
    void another_line_contradicts() throws IOException {
        List<String> all = Files.readAllLines(lines);
        all.set(NOTES, all.get(NOTES).replace("rinse", "Rinse"));
        Files.write(lines, all);
        Stretch other = read();
        assertThat(other.entries()).hasSize(NOTES + 1);
        assertThat(other.fits(seal)).isFalse();
        assertThat(other.contradicts(seal)).isTrue();
        assertThat(Stretch.whole(there, here.founded(), seal)).isFalse();
    }

    @Test
    void a_line_that_is_no_entry_contradicts() throws IOException {
        List<String> all = Files.readAllLines(lines);
        all.set(NOTES, "{}");
        Files.write(lines, all);
        assertThat(read().contradicts(seal)).isTrue();
    }

    @Test
    void an_entry_of_another_place_contradicts() throws IOException {
        List<String> all = Files.readAllLines(lines);
        all.set(2, all.get(3));
        Files.write(lines, all);
        assertThat(read().contradicts(seal)).isTrue();
        assertThat(read().entries()).hasSize(2);
    }

    @Test
    void an_entry_that_follows_another_than_the_one_before_contradicts() throws IOException {
        List<String> all = Files.readAllLines(lines);
        all.set(1, all.get(1).replace("rinse", "Rinse"));
        Files.write(lines, all);
        assertThat(read().contradicts(seal)).isTrue();
        assertThat(read().entries()).hasSize(2);
    }

    @Test
    void what_is_here_already_is_not_read_again() throws IOException {
        Opened whole = Opening.open(there);
        Station all = new Station(there, here.founded(), whole);
        assertThat(Stretch.read(there, all, seal).entries()).isEmpty();
        assertThat(Stretch.read(there, all, seal).fits(seal)).isTrue();
    }

    @Test
    void a_checkpoint_that_claims_another_place_for_the_same_lines_contradicts() throws IOException {
        Seal moved = new Seal(seal.size(), seal.root(), seal.frontier(), seal.offset() - 1, seal.note());
        Stretch all = Stretch.read(there, here, moved);
        assertThat(all.fits(moved)).isFalse();
        assertThat(all.contradicts(moved)).isTrue();
    }

    @Test
    void a_stretch_goes_on_over_the_end_of_a_segment() throws IOException {
        Path home = folder.resolve("long");
        Recorded.closed(home, StationFolder.SEGMENT + 3);
        StationFolder files = Recorded.files(home);
        Founded founded = Beginning.of(files).founded().orElseThrow();
        List<String> list = Files.readAllLines(files.checkpoints());
        Seal newest = Seal.parse(list.get(list.size() - 1)).orElseThrow();
        Station nothing = new Station(files, founded, Opened.nothing(founded));
        assertThat(Stretch.read(files, nothing, newest).fits(newest)).isTrue();
        assertThat(Stretch.whole(files, founded, newest)).isTrue();
        Files.delete(files.segment(1));
        Stretch part = Stretch.read(files, nothing, newest);
        assertThat(part.contradicts(newest)).isFalse();
        assertThat(part.entries()).hasSize(StationFolder.SEGMENT);
    }
}
