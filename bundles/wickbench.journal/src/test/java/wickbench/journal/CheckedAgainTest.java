package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.proof.Note;

/** What the full check says where the rest of the journal does not show it. */
class CheckedAgainTest {
    @TempDir
    Path root;

    private Path home;

    private StationFolder closed(int notes) {
        home = root.resolve("home");
        Recorded.closed(home, notes);
        return Recorded.files(home);
    }

    private List<String> codes(StationFolder files) throws IOException {
        Verification shown =
                new Verifier(new Layout(home), files, Verifier.Bounds.of(files, Optional.empty()), Progress.NONE).run();
        return shown.findings().stream().map(Verification.Broken::code).toList();
    }

    private static void write(Path file, List<String> lines) throws IOException {
        Files.writeString(file, String.join("\n", lines) + "\n");
    }

    @Test
    void a_first_entry_that_is_not_there_or_founds_nothing_is_named() throws IOException {
        StationFolder files = closed(2);
        List<String> lines = Files.readAllLines(files.segment(0));
        for (String first : List.of("{}", lines.get(1), lines.get(0).replace("station.founded", "station.f0unded"))) {
            List<String> changed = new ArrayList<>(lines);
            changed.set(0, first);
            write(files.segment(0), changed);
            assertThat(codes(files)).as(first).contains("first.missing");
        }
        Files.writeString(files.segment(0), "");
        assertThat(codes(files)).contains("first.missing", "checkpoint.beyond");
        Files.delete(files.segment(0));
        assertThat(codes(files)).contains("checkpoint.beyond").doesNotContain("first.missing");
    }

    @Test
    void a_key_that_may_not_be_read_proves_nothing_and_hides_nothing() throws IOException {
        StationFolder files = closed(2);
        Path key = new Layout(home).key(Recorded.STATION);
        Files.delete(key);
        assertThat(codes(files)).containsExactly("key");
        // a folder cannot be read as a file, by nobody
        Files.createDirectory(key);
        assertThat(codes(files)).isEmpty();
    }

    @Test
    void a_segment_with_more_entries_than_it_may_hold_or_fewer_is_named() throws IOException {
        StationFolder files = closed(StationFolder.SEGMENT + 1);
        String second = Files.readString(files.segment(1));
        Files.writeString(files.segment(0), second, StandardOpenOption.APPEND);
        Files.writeString(files.segment(1), "");
        assertThat(codes(files)).contains("segment");
        List<String> lines = Files.readAllLines(files.segment(0));
        write(files.segment(0), lines.subList(0, StationFolder.SEGMENT - 1));
        write(files.segment(1), lines.subList(StationFolder.SEGMENT - 1, lines.size()));
        assertThat(codes(files)).contains("segment");
    }

    @Test
    void an_entry_that_no_checkpoint_covers_is_held_against_what_the_program_recorded() throws IOException {
        // a simulated home, in which no checkpoint is made by the clock
        HomeFolder dream = new HomeFolder(root.resolve("dream"));
        dream.simulate(3, Instant.EPOCH);
        try (JournalFolder journal = Recorded.open(dream)) {
            journal.append(Recorded.notes(0, 2));
            StationFolder files = Recorded.files(dream.folder());
            List<String> lines = Files.readAllLines(files.segment(0));
            lines.set(2, lines.get(2).replace("rinse", "rinsE"));
            write(files.segment(0), lines);
            assertThat(journal.verify(Progress.NONE).findings())
                    .extracting(Verification.Broken::code)
                    .containsExactly("tree.root");
        }
    }

    @Test
    void a_newest_checkpoint_with_the_right_key_and_another_name_is_named() throws IOException {
        StationFolder files = closed(2);
        StationKey key = StationKey.parse(Files.readString(new Layout(home).key(Recorded.STATION)))
                .orElseThrow();
        Note mine = Note.parse(Files.readString(files.note())).orElseThrow();
        Note other = Note.sign("wickbench.invalid/station-2", mine.size(), mine.root(), key.open(), key::sign);
        Files.writeString(files.note(), other.whole());
        assertThat(codes(files)).containsExactly("checkpoint.signature");
    }

    @Test
    void a_list_of_checkpoints_full_of_rubbish_fills_neither_memory_nor_page() throws IOException {
        StationFolder files = closed(2);
        String list = Files.readString(files.checkpoints());
        Files.writeString(files.checkpoints(), list + ("x".repeat(700_000) + "\n").repeat(4) + "half");
        assertThat(codes(files)).hasSize(6).containsOnly("checkpoint.unreadable", "checkpoint.missing", "tail.torn");
        Files.writeString(files.checkpoints(), list + "rubbish\n".repeat(1_500));
        assertThat(codes(files)).hasSize(1_000);
    }

    @Test
    void an_entry_whose_place_was_changed_is_named_once() throws IOException {
        StationFolder files = closed(6);
        List<String> lines = Files.readAllLines(files.segment(0));
        for (String place : List.of("2", "3", "5", "99")) {
            List<String> changed = new ArrayList<>(lines);
            changed.set(4, lines.get(4).replace("\"seq\":4", "\"seq\":" + place));
            write(files.segment(0), changed);
            assertThat(codes(files))
                    .as(place)
                    .filteredOn(code -> code.startsWith("entry"))
                    .containsExactly("entry.changed");
        }
    }

    @Test
    void lines_are_found_in_more_segments_than_are_remembered() throws IOException {
        home = root.resolve("many");
        StationFolder files = Recorded.files(home);
        Files.createDirectories(files.folder());
        long segments = 103;
        for (long segment = 0; segment < segments; segment++) {
            Files.writeString(files.segment(segment), "x".repeat((int) segment) + "\nsecond\n");
        }
        Places places = new Places(files);
        Kept kept = new Kept(segments * StationFolder.SEGMENT, Kept.NOTHING.leaf(), Files.size(files.segment(102)));
        for (int twice = 0; twice < 2; twice++) {
            for (long segment = 0; segment < segments; segment++) {
                long place = segment * StationFolder.SEGMENT;
                assertThat(places.start(kept, place)).isZero();
                assertThat(places.start(kept, place + 1)).isEqualTo(segment + 1);
            }
        }
        assertThatThrownBy(() -> places.start(kept, 7)).hasMessageContaining("Entry 7 is missing");
    }

    @Test
    void one_line_that_is_no_entry_is_one_finding() throws IOException {
        StationFolder files = closed(6);
        List<String> lines = Files.readAllLines(files.segment(0));
        for (String line : List.of("{}", "77}", "}", "", "{\"v\":1}")) {
            List<String> changed = new ArrayList<>(lines);
            changed.set(3, line);
            write(files.segment(0), changed);
            assertThat(codes(files))
                    .as(line)
                    .filteredOn(code -> code.startsWith("entry"))
                    .containsExactly("entry.unreadable");
        }
    }

    @Test
    void a_newest_checkpoint_that_cannot_be_read_is_named() throws IOException {
        StationFolder files = closed(2);
        Files.writeString(files.note(), "wickbench.invalid/station-1\n3\n");
        assertThat(codes(files)).containsExactly("checkpoint.unreadable");
        Files.delete(files.note());
        assertThat(codes(files)).isEmpty();
    }
}
