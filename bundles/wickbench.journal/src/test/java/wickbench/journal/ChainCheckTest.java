package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.progress.Progress;
import wickbench.proof.TreeHash;

/** Which entries are named when links of the chain do not fit, whatever the checkpoints say. */
class ChainCheckTest {
    /** The founding entry and eleven notes. */
    private static final int LAST = 11;

    @TempDir
    Path folder;

    private StationFolder files;
    private List<String> lines;

    @BeforeEach
    void record() throws IOException {
        Recorded.closed(folder, LAST);
        files = Recorded.files(folder);
        lines = Files.readAllLines(files.segment(0));
        assertThat(found()).isEmpty();
    }

    /** Returns what is said of entries, as {@code code place}. */
    private List<String> found() throws IOException {
        Files.writeString(files.segment(0), String.join("\n", lines) + "\n");
        Verifier.Bounds bounds = Verifier.Bounds.of(files, Optional.empty());
        return new Verifier(new Layout(folder), files, bounds, Progress.NONE)
                .run().findings().stream()
                        .filter(broken -> broken.code().startsWith("entry."))
                        .map(broken -> broken.code() + " "
                                + broken.where()
                                        .substring(Recorded.STATION.value().length() + 1))
                        .toList();
    }

    private void changeText(int place) {
        lines.set(place, lines.get(place).replace("rinse", "rinsE"));
    }

    private void changeLink(int place) {
        String line = lines.get(place);
        int at = line.indexOf("\"prev\":\"") + 8;
        lines.set(place, line.substring(0, at) + (line.charAt(at) == '0' ? '1' : '0') + line.substring(at + 1));
    }

    private void restore(List<String> whole) {
        lines = new ArrayList<>(whole);
    }

    @Test
    void one_changed_entry_is_named_and_at_the_end_one_of_two() throws IOException {
        List<String> whole = List.copyOf(lines);
        for (int place = 1; place <= LAST; place++) {
            restore(whole);
            changeText(place);
            // no link leads to the last one; only a checkpoint tells
            List<String> text = place < LAST - 1
                    ? List.of("entry.changed " + place)
                    : place == LAST ? List.of() : List.of("entry.chain 10-11");
            assertThat(found()).as("text of " + place).isEqualTo(text);
            restore(whole);
            changeLink(place);
            assertThat(found())
                    .as("link of " + place)
                    .containsExactly(place == LAST ? "entry.chain 10-11" : "entry.changed " + place);
        }
    }

    @Test
    void two_changed_entries_apart_are_both_named() throws IOException {
        changeText(3);
        changeText(6);
        assertThat(found()).containsExactly("entry.changed 3", "entry.changed 6");
        changeLink(9);
        assertThat(found()).containsExactly("entry.changed 3", "entry.changed 6", "entry.changed 9");
    }

    @Test
    void of_two_neighbours_that_were_changed_the_second_is_named() throws IOException {
        changeText(3);
        changeText(4);
        assertThat(found()).containsExactly("entry.changed 4");
    }

    @Test
    void a_changed_entry_is_named_whatever_comes_soon_after_it() throws IOException {
        List<String> whole = List.copyOf(lines);
        changeText(3);
        lines.set(5, "{}");
        assertThat(found()).containsExactly("entry.changed 3", "entry.unreadable 5");
        restore(whole);
        changeText(3);
        lines.remove(5);
        assertThat(found()).containsExactly("entry.changed 3", "entry.missing 5");
        restore(whole);
        changeText(3);
        lines.remove(5);
        lines.remove(5);
        changeText(7);
        assertThat(found()).containsExactly("entry.changed 3", "entry.missing 5", "entry.changed 9");
    }

    @Test
    void a_line_that_cannot_be_read_says_nothing_of_the_lines_beside_it() throws IOException {
        List<String> whole = List.copyOf(lines);
        for (int place = 1; place <= LAST; place++) {
            restore(whole);
            lines.set(place, "{}");
            assertThat(found()).containsExactly("entry.unreadable " + place);
        }
        restore(whole);
        lines.set(4, "{}");
        changeText(7);
        assertThat(found()).containsExactly("entry.unreadable 4", "entry.changed 7");
    }

    @Test
    void an_entry_of_the_same_place_in_another_station_does_not_belong_there() throws IOException {
        String other = lines.get(6).replace(Recorded.STATION.value(), "station-2");
        lines.set(6, other);
        // it follows the line before, so it is that entry with another name
        assertThat(found()).containsExactly("entry.changed 6");
        changeLink(6);
        assertThat(found().get(0)).isEqualTo("entry.misplaced 6");
    }

    /** Below a checkpoint the hashes vouch for the form of a line; above the newest nothing else does. */
    @Test
    void a_line_with_the_right_end_and_another_form_is_named_above_the_newest_checkpoint() throws IOException {
        int next = LAST + 1;
        Hash prev = Hash.of(new TreeHash().leaf(lines.get(LAST).getBytes(StandardCharsets.UTF_8)));
        Entry last = EntryLine.readStrictly("line", lines.get(LAST).getBytes(StandardCharsets.UTF_8), prev)
                .orRefuse();
        Entry more = new Entry(
                new EntryRef(Recorded.STATION, next),
                new UUID(3, 7),
                prev,
                last.at(),
                last.offset(),
                last.by(),
                last.kind(),
                last.v(),
                last.body(),
                prev);
        String line = new String(EntryLine.write(more), StandardCharsets.UTF_8);
        lines.add(line);
        assertThat(found()).isEmpty();
        lines.set(next, "{ " + line.substring(1));
        assertThat(found()).containsExactly("entry.unreadable " + next);
    }
}
