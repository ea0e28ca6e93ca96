package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.journal.Publisher.There;

/** This station's files in the shared folder, whatever somebody or a crash left there. */
class PublisherTest {
    private static final int NOTES = 3;

    @TempDir
    Path root;

    private StationFolder from;
    private StationFolder to;
    private Publisher publisher;

    @BeforeEach
    void record() throws IOException {
        record(NOTES);
        Files.createDirectories(root.resolve("share/station-1"));
        from = Recorded.files(root.resolve("home"));
        to = new ShareFolder(root.resolve("share")).of(Recorded.STATION);
        publisher = again();
    }

    private Publisher again() {
        return new Publisher(new FaultyDisk().unforced(), from, to);
    }

    private void record(int notes) {
        try (JournalFolder journal = Recorded.open(root.resolve("home"), new FaultyDisk().unforced())) {
            journal.append(Recorded.notes(0, notes));
        }
    }

    private Host.Shown shown() throws IOException {
        List<String> lines = Files.readAllLines(from.checkpoints());
        return new Host.Shown(Seal.parse(lines.get(lines.size() - 1)), Files.size(from.checkpoints()));
    }

    private void same() throws IOException {
        for (long segment = 0; Files.exists(from.segment(segment)); segment++) {
            assertThat(to.segment(segment)).hasSameBinaryContentAs(from.segment(segment));
        }
        assertThat(to.checkpoints()).hasSameBinaryContentAs(from.checkpoints());
        assertThat(to.note()).hasSameBinaryContentAs(from.note());
    }

    @Test
    void what_no_checkpoint_covers_is_not_shown() throws IOException {
        assertThat(publisher.publish(new Host.Shown(Optional.empty(), 0))).isFalse();
        assertThat(to.folder()).isEmptyDirectory();
    }

    @Test
    void what_is_new_is_shown_once() throws IOException {
        assertThat(publisher.publish(shown())).isTrue();
        assertThat(publisher.publish(shown())).isFalse();
        assertThat(publisher.compare(shown())).isEqualTo(There.OURS);
        same();
        record(2);
        assertThat(publisher.compare(shown())).isEqualTo(There.OURS);
        assertThat(publisher.publish(shown())).isTrue();
        same();
    }

    @Test
    void a_journal_that_grows_over_its_segments_is_shown_whole() throws IOException {
        publisher.publish(shown());
        record(StationFolder.SEGMENT);
        publisher.publish(shown());
        same();
        record(2);
        publisher.publish(shown());
        same();
        assertThat(again().publish(shown())).isTrue();
        same();
    }

    /** Returns how many bytes were written into each file of the shared folder, which was forced before the newest checkpoint was placed. */
    private Map<String, Long> written(Host.Shown shown) throws IOException {
        TracedDisk disk = TracedDisk.over(root);
        Map<Integer, String> names = new HashMap<>();
        disk.numbers()
                .forEach((path, number) -> names.put(number, path.getFileName().toString()));
        new Publisher(disk, from, to).publish(shown);
        disk.numbers()
                .forEach((path, number) -> names.put(number, path.getFileName().toString()));
        Map<String, Long> written = new TreeMap<>();
        Set<Integer> unforced = new HashSet<>();
        boolean folderForced = false;
        for (Change change : disk.trace()) {
            if (change instanceof Change.Wrote wrote) {
                written.merge(names.get(wrote.file()), (long) wrote.bytes().length, Long::sum);
                unforced.add(wrote.file());
            } else if (change instanceof Change.Forced forced) {
                unforced.remove(forced.file());
            } else if (change instanceof Change.FolderForced forced
                    && forced.path().equals(to.folder())) {
                folderForced = true;
            } else if (change instanceof Change.Renamed renamed && renamed.to().equals(to.note())) {
                assertThat(folderForced).isTrue();
                assertThat(unforced).isEmpty();
            }
        }
        assertThat(folderForced).isTrue();
        return written;
    }

    private static long grown(Path now, long before) throws IOException {
        return Files.size(now) - before;
    }

    @Test
    void what_is_there_already_is_not_written_again() throws IOException {
        record(StationFolder.SEGMENT);
        publisher.publish(shown());
        long list = Files.size(from.checkpoints());
        long second = Files.size(from.segment(1));
        record(2);
        assertThat(written(shown()))
                .containsEntry("entries-000001.jsonl", grown(from.segment(1), second))
                .containsEntry("checkpoints.jsonl", grown(from.checkpoints(), list))
                .doesNotContainKey("entries-000000.jsonl");
        same();
    }

    @Test
    void half_of_a_file_from_an_interrupted_copy_is_gone_on_with_and_other_bytes_are_not() throws IOException {
        byte[] all = Files.readAllBytes(from.segment(0));
        byte[] half = Arrays.copyOf(all, all.length / 2);
        Files.write(to.segment(0), half);
        assertThat(written(shown())).containsEntry("entries-000000.jsonl", (long) all.length - half.length);
        same();
        half[half.length - 1] ^= 1;
        Files.write(to.segment(0), half);
        assertThat(written(shown())).containsEntry("entries-000000.jsonl", (long) all.length);
        same();
    }

    @Test
    void what_an_interrupted_copy_left_is_gone_on_with() throws IOException {
        byte[] all = Files.readAllBytes(from.segment(0));
        Files.write(to.segment(0), Arrays.copyOf(all, all.length / 2));
        publisher.publish(shown());
        same();
    }

    @Test
    void what_was_never_signed_is_written_over() throws IOException {
        Files.writeString(to.segment(0), "x".repeat(10_000));
        Files.writeString(to.checkpoints(), "half a line");
        assertThat(publisher.compare(shown())).isEqualTo(There.OURS);
        publisher.publish(shown());
        same();
    }

    @Test
    void the_beginning_all_and_more_of_what_is_here_are_told_apart() throws IOException {
        Host.Shown before = shown();
        publisher.publish(before);
        record(2);
        Host.Shown after = shown();
        assertThat(again().compare(after)).isEqualTo(There.OURS);
        again().publish(after);
        assertThat(again().compare(after)).isEqualTo(There.OURS);
        assertThat(again().compare(before)).isEqualTo(There.MORE);
    }

    @Test
    void another_list_of_checkpoints_is_another_history() throws IOException {
        publisher.publish(shown());
        String ours = Files.readString(to.checkpoints());
        for (String other :
                List.of("{}\n" + ours, "{}\n", ours + ours.replace("size", "Size"), "x" + ours.substring(1))) {
            Files.writeString(to.checkpoints(), other);
            There there = again().compare(shown());
            assertThat(there).as(other).isEqualTo(other.startsWith(ours) ? There.MORE : There.OTHER);
        }
    }

    @Test
    void another_key_in_the_first_entry_is_another_history_before_any_checkpoint() throws IOException {
        Files.copy(from.segment(0), to.segment(0));
        assertThat(publisher.compare(shown())).isEqualTo(There.OURS);
        Recorded.closed(root.resolve("stranger"), 1);
        Files.copy(
                Recorded.files(root.resolve("stranger")).segment(0),
                to.segment(0),
                StandardCopyOption.REPLACE_EXISTING);
        assertThat(publisher.compare(shown())).isEqualTo(There.OTHER);
        Files.writeString(to.segment(0), "{}\n", StandardOpenOption.TRUNCATE_EXISTING);
        assertThat(publisher.compare(shown())).isEqualTo(There.OURS);
    }
}
