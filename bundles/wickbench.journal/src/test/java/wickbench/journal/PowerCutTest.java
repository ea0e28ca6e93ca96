package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

/**
 * The power cut after every single step that the journal takes on a disk: what was acknowledged is there, perhaps with whole
 * entries that were on their way, and nothing is called tampering.
 */
@Tag("long")
class PowerCutTest {
    /** What chance may leave of what was not forced, besides all of it and nothing. */
    private static final int CHANCES = 8;

    @TempDir
    Path folder;

    private int laid;

    @Test
    @Meets("ALCOA+ enduring")
    void a_home_that_is_founded_and_filled() throws IOException {
        Path home = Files.createDirectories(folder.resolve("home"));
        survives(home, disk -> {
            try (JournalFolder journal = Recorded.open(home, disk)) {
                append(journal, disk, 0, 1);
                append(journal, disk, 1, 1);
                append(journal, disk, 2, 7);
                journal.checkpoint();
                append(journal, disk, 9, 1);
                append(journal, disk, 10, 3);
            }
        });
    }

    @Test
    void a_home_that_is_opened_again_and_crosses_the_border_of_a_segment() throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, StationFolder.SEGMENT - 5);
        survives(home, disk -> {
            try (JournalFolder journal = Recorded.open(home, disk)) {
                append(journal, disk, 0, 2);
                append(journal, disk, 2, 9);
                append(journal, disk, 11, 1);
            }
        });
    }

    @Test
    void a_disk_that_was_full_for_a_moment() throws IOException {
        for (int write = 0; write < 6; write++) {
            Path home = folder.resolve("home-" + write);
            Recorded.closed(home, 2);
            int full = write;
            survives(home, disk -> {
                try (JournalFolder journal = Recorded.open(home, disk)) {
                    disk.fullAt(full);
                    append(journal, disk, 0, 6);
                    append(journal, disk, 6, 2);
                    seal(journal);
                    append(journal, disk, 8, 3);
                    seal(journal);
                }
            });
        }
    }

    @Test
    void a_torn_end_that_is_being_set_aside() throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, 3);
        Files.write(Recorded.files(home).segment(0), new byte[700], java.nio.file.StandardOpenOption.APPEND);
        Files.writeString(
                Recorded.files(home).checkpoints(), "{\"frontier\":[", java.nio.file.StandardOpenOption.APPEND);
        survives(home, disk -> {
            try (JournalFolder journal = Recorded.open(home, disk)) {
                append(journal, disk, 0, 2);
            }
        });
    }

    private static void append(JournalFolder journal, TracedDisk disk, int from, int count) {
        List<Draft> drafts = Recorded.notes(from, count);
        disk.say(new Change.Asked(drafts.stream().map(Draft::id).toList()));
        try {
            journal.append(drafts);
            disk.say(new Change.Answered(true));
        } catch (Refusal e) {
            assertThat(e.code()).isEqualTo(Say.FAILED);
            disk.say(new Change.Answered(false));
        }
    }

    private static void seal(JournalFolder journal) {
        try {
            journal.checkpoint();
        } catch (Refusal e) {
            assertThat(e.code()).isEqualTo(Say.FAILED);
        }
    }

    /** Runs what records, then cuts the power after every step of it, each time with several fates. */
    private void survives(Path home, Consumer<TracedDisk> recording) throws IOException {
        TracedDisk disk = TracedDisk.over(home);
        CutDisk cut = new CutDisk(home, disk.numbers());
        List<UUID> before = ids(read(copy(home)));
        recording.accept(disk);
        SplittableRandom chance = new SplittableRandom(disk.trace().size());
        Told told = new Told(before);
        for (Change step : disk.trace()) {
            cut.take(step);
            told.take(step);
            check(home, cut, CutDisk.Fate.LOST, told);
            if (!cut.certain()) {
                check(home, cut, CutDisk.Fate.KEPT, told);
            }
            for (int i = 0; i < CHANCES && !cut.certain(); i++) {
                check(home, cut, CutDisk.Fate.by(chance), told);
            }
        }
        assertThat(told.kept).hasSizeGreaterThan(before.size());
    }

    /** What the caller knew when the power went. */
    private static final class Told {
        private final List<UUID> kept;
        private List<UUID> asked = List.of();

        Told(List<UUID> kept) {
            this.kept = new ArrayList<>(kept);
        }

        void take(Change step) {
            if (step instanceof Change.Asked now) {
                asked = now.ids();
            } else if (step instanceof Change.Answered answer) {
                kept.addAll(answer.kept() ? asked : List.of());
                asked = List.of();
            }
        }
    }

    private void check(Path home, CutDisk cut, CutDisk.Fate fate, Told told) throws IOException {
        Path after = folder.resolve("after-" + laid++);
        cut.lay(home, after, fate);
        // it names the program that runs this test, which did not die
        Files.deleteIfExists(new Layout(after).holder());
        List<UUID> found = ids(read(after));
        assertThat(found).hasSizeGreaterThanOrEqualTo(told.kept.size());
        assertThat(found.subList(0, told.kept.size())).isEqualTo(told.kept);
        List<UUID> more = found.subList(told.kept.size(), found.size());
        assertThat(more).isEqualTo(told.asked.subList(0, more.size()));
        delete(after);
    }

    /** Opens, reads, verifies, records one more, and verifies again. */
    private List<Entry> read(Path home) {
        List<Entry> entries;
        try (JournalFolder journal = JournalFolder.open(new HomeFolder(home), new FaultyDisk().unforced(), e -> {})) {
            assertThat(journal.status().readOnly()).isEmpty();
            entries = Recorded.entries(journal);
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
            journal.append(Recorded.notes(9_000, 1));
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        }
        return entries;
    }

    /** Returns the ids of what was asked for: not of how the station was founded nor of what it says of torn ends. */
    private static List<UUID> ids(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.kind().equals("note.written"))
                .map(Entry::id)
                .toList();
    }

    private Path copy(Path home) throws IOException {
        Path copy = folder.resolve("copy-" + laid++);
        Recorded.copy(home, copy);
        return copy;
    }

    private static void delete(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
