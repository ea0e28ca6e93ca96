package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.proof.Frontier;
import wickbench.proof.OpenKey;

/** What opening believes, and what it calls tampering, where the files of a station do not fit one another. */
class OpeningTest {
    @TempDir
    Path root;

    private StationFolder closed(int notes) {
        Recorded.closed(root.resolve("home"), notes);
        return Recorded.files(root.resolve("home"));
    }

    private StationFolder killed(int notes) {
        Recorded.killed(root.resolve("home"), notes);
        return Recorded.files(root.resolve("home"));
    }

    private static void refused(StationFolder files, String words) {
        assertThatThrownBy(() -> Opening.open(files))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo(Say.TAMPERED))
                .hasMessageContaining(words);
    }

    private static void write(Path file, List<String> lines) throws IOException {
        Files.writeString(file, String.join("\n", lines) + "\n");
    }

    private static Seal last(StationFolder files) throws IOException {
        List<String> lines = Files.readAllLines(files.checkpoints());
        return Seal.parse(lines.get(lines.size() - 1)).orElseThrow();
    }

    @Test
    void entries_gone_from_under_a_checkpoint_are_missed() throws IOException {
        StationFolder files = closed(3);
        Files.writeString(files.segment(0), "no line end");
        refused(files, "Entry 0 is missing");
        Files.delete(files.segment(0));
        refused(files, "Entry 0 is missing");
    }

    @Test
    void a_journal_that_begins_with_no_founding_is_refused() throws IOException {
        StationFolder files = killed(2);
        List<String> lines = Files.readAllLines(files.segment(0));
        write(files.segment(0), List.of(lines.get(0).replace("station.founded", "station.f0unded")));
        refused(files, "station-1:0");
    }

    @Test
    void a_checkpoint_that_claims_to_end_before_the_first_line_is_refused() throws IOException {
        StationFolder files = closed(3);
        Seal last = last(files);
        // the place is not signed, so whoever has a text editor can write another
        write(files.checkpoints(), List.of(new Seal(last.size(), last.root(), last.frontier(), 0, last.note()).line()));
        refused(files, "A checkpoint covers 4 entries");
    }

    @Test
    void the_last_line_under_a_checkpoint_must_be_the_entry_that_was_signed() throws IOException {
        StationFolder files = closed(3);
        List<String> lines = Files.readAllLines(files.segment(0));
        List<String> swapped = List.of(lines.get(0), lines.get(1), lines.get(3), lines.get(2));
        write(files.segment(0), swapped);
        refused(files, "station-1:3");
        String text = String.join("\n", lines) + "\n";
        Files.writeString(files.segment(0), text.substring(0, text.length() - 2) + " \n");
        refused(files, "station-1:3");
    }

    @Test
    void a_single_last_leaf_is_held_against_the_frontier() throws IOException {
        StationFolder files = closed(4);
        String text = Files.readString(files.segment(0));
        int at = text.lastIndexOf("rinse");
        Files.writeString(files.segment(0), text.substring(0, at) + "rinsE" + text.substring(at + 5));
        refused(files, "station-1:4");
    }

    @Test
    void a_torn_checkpoint_without_any_entry_leaves_a_home_to_be_founded() throws IOException {
        StationFolder files = killed(1);
        Files.delete(files.segment(0));
        Files.writeString(files.checkpoints(), "{\"frontier\":[\"");
        Opened opened = Opening.open(files);
        assertThat(opened.founded()).isEmpty();
        assertThat(opened.setAside()).hasSize(1);
    }

    @Test
    void an_entry_at_anothers_place_is_refused() throws IOException {
        StationFolder files = killed(4);
        List<String> lines = Files.readAllLines(files.segment(0));
        Collections.swap(lines, 2, 3);
        write(files.segment(0), lines);
        refused(files, "station-1:2");
    }

    @Test
    void a_line_that_is_no_entry_is_refused() throws IOException {
        StationFolder files = killed(4);
        List<String> lines = Files.readAllLines(files.segment(0));
        lines.set(2, lines.get(2) + " ");
        write(files.segment(0), lines);
        refused(files, "station-1:2");
    }

    @Test
    void an_entry_in_the_file_of_the_segment_before_its_own_is_refused() throws IOException {
        StationFolder files = closed(StationFolder.SEGMENT - 2);
        try (JournalFolder journal = Recorded.open(root.resolve("home"))) {
            journal.append(Recorded.notes(0, 2));
            Recorded.copy(root.resolve("home"), root.resolve("over"));
        }
        StationFolder over = Recorded.files(root.resolve("over"));
        Files.writeString(over.segment(0), Files.readString(over.segment(1)), StandardOpenOption.APPEND);
        Files.delete(over.segment(1));
        refused(over, "station-1:" + StationFolder.SEGMENT);
        assertThat(Opening.open(files).kept().size()).isEqualTo(StationFolder.SEGMENT + 1);
    }

    @Test
    void a_newest_checkpoint_that_anybody_else_signed_is_refused() throws IOException {
        StationFolder files = killed(2);
        StationKey other = StationKey.fromSeed(new byte[OpenKey.BYTES]);
        Seal forged = Seal.sign(other, Recorded.STATION, new Frontier(), 0);
        Files.writeString(files.note(), forged.note());
        refused(files, "not signed by this station's key");
        Files.delete(files.segment(0));
        refused(files, "not signed by this station's key");
    }

    @Test
    void the_second_file_of_an_append_whose_first_never_reached_the_disk_is_set_aside() throws IOException {
        StationFolder files = killed(2);
        Files.writeString(files.segment(1), "{\"at\":\"whole, but far from its place\"}\n");
        Opened opened = Opening.open(files);
        assertThat(opened.kept().size()).isEqualTo(3);
        assertThat(opened.setAside()).extracting(SetAside::file).containsExactly(files.segment(1));
        Files.writeString(files.segment(1), "");
        assertThat(Opening.open(files).setAside()).isEmpty();
    }
}
