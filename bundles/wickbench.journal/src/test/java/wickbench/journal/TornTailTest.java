package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;

/** What a crash leaves at the end of the files is set aside and told; what lies below a checkpoint is never cut in silence. */
class TornTailTest {
    private static final int NOTES = 8;
    private static final int LAST = 5;

    @TempDir
    Path folder;

    @Test
    @Tag("long")
    void a_cut_at_every_byte_of_what_no_checkpoint_covers_keeps_all_whole_entries() throws IOException {
        Path killed = folder.resolve("killed");
        Recorded.killed(killed, NOTES);
        byte[] segment = Files.readAllBytes(Recorded.files(killed).segment(0));
        List<Entry> all = Recorded.entries(copy(killed, "all"));
        for (int cut = startOfLast(segment); cut < segment.length; cut++) {
            Path home = copy(killed, "cut-" + cut);
            truncate(Recorded.files(home).segment(0), cut);
            try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
                reportsTornTail(journal, all, segment, cut);
            }
            assertThat(Recorded.verified(home, new FaultyDisk().unforced()).findings())
                    .isEmpty();
        }
    }

    private static void reportsTornTail(JournalFolder journal, List<Entry> all, byte[] segment, int cut)
            throws IOException {
        int whole = lines(segment, cut);
        List<Entry> kept = Recorded.entries(journal);
        assertThat(kept).startsWith(all.subList(0, whole).toArray(Entry[]::new));
        boolean torn = segment[cut - 1] != '\n';
        assertThat(kept).hasSize(torn ? whole + 1 : whole);
        assertThat(journal.status().notices()).hasSize(torn ? 1 : 0);
        if (torn) {
            Entry told = kept.get(whole);
            assertThat(told.kind()).isEqualTo("journal.tail-set-aside");
            Path aside = Recorded.files(journal.status().folder()).folder().resolve(text(told, "file"));
            assertThat(Hash.ofContent(Files.readAllBytes(aside)).hex()).isEqualTo(text(told, "sha256"));
            assertThat(told.body().get("place")).contains(new Json.Num(BigDecimal.valueOf(whole)));
        }
    }

    private static String text(Entry entry, String name) {
        return ((Json.Text) entry.body().get(name).orElseThrow()).value();
    }

    @Test
    @Tag("long")
    void a_cut_at_every_byte_below_a_checkpoint_is_tampering() throws IOException {
        Path closed = folder.resolve("closed");
        Recorded.closed(closed, NOTES);
        byte[] segment = Files.readAllBytes(Recorded.files(closed).segment(0));
        for (int cut = startOfLast(segment); cut < segment.length; cut++) {
            Path home = copy(closed, "cut-" + cut);
            truncate(Recorded.files(home).segment(0), cut);
            try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
                assertThatThrownBy(journal::status)
                        .isInstanceOfSatisfying(
                                Refusal.class,
                                refusal -> assertThat(refusal.code()).isEqualTo("journal.tampered"));
                assertThat(journal.verify(Progress.NONE).holds()).isFalse();
            }
            assertThat(Files.size(Recorded.files(home).segment(0))).isEqualTo(cut);
        }
    }

    @Test
    void a_cut_at_every_byte_of_the_first_entry_leaves_a_home_to_be_founded() throws IOException {
        Recorded.killed(folder.resolve("one"), 1);
        byte[] segment =
                Files.readAllBytes(Recorded.files(folder.resolve("one")).segment(0));
        for (int cut = 1; cut < lineEnd(segment); cut += 7) {
            Path home = copy(folder.resolve("one"), "cut-" + cut);
            truncate(Recorded.files(home).segment(0), cut);
            try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
                assertThat(journal.founding()).isEmpty();
                assertThat(journal.status().notices()).hasSize(1);
                assertThat(journal.append(Recorded.notes(0, 1)).get(0).ref().seq())
                        .isEqualTo(1);
            }
            assertThat(Recorded.verified(home, new FaultyDisk().unforced()).findings())
                    .isEmpty();
        }
    }

    @Test
    void sectors_never_written_are_a_torn_tail_and_no_tampering() throws IOException {
        Path killed = folder.resolve("killed");
        Recorded.killed(killed, NOTES);
        byte[] segment = Files.readAllBytes(Recorded.files(killed).segment(0));
        Path file = Recorded.files(killed).segment(0);
        try (RandomAccessFile hole = new RandomAccessFile(file.toFile(), "rw")) {
            hole.seek(segment.length - 600L);
            hole.write(new byte[40]);
        }
        try (JournalFolder journal = Recorded.open(killed)) {
            assertThat(journal.status().notices()).hasSize(1);
            assertThat(journal.size(Recorded.STATION)).isLessThan(NOTES + 1);
        }
        assertThat(Recorded.verified(killed).findings()).isEmpty();
    }

    @Test
    void a_batch_torn_across_two_segments_is_set_aside_in_both() throws IOException {
        Recorded.closed(folder.resolve("full"), StationFolder.SEGMENT - 3);
        Path home = folder.resolve("full");
        StationFolder files = Recorded.files(home);
        Files.writeString(files.segment(0), "{\"at\":", StandardOpenOption.APPEND);
        Files.writeString(files.segment(1), "{}\n");
        try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
            assertThat(journal.status().notices()).hasSize(2);
            assertThat(journal.size(Recorded.STATION)).isEqualTo(StationFolder.SEGMENT);
        }
        assertThat(Recorded.verified(home, new FaultyDisk().unforced()).findings())
                .isEmpty();
    }

    @Test
    void a_torn_checkpoint_is_set_aside_and_the_one_before_believed() throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, 3);
        Path checkpoints = Recorded.files(home).checkpoints();
        String line = Files.readString(checkpoints);
        for (String torn : List.of(line.substring(0, 30), "\0".repeat(30), "\0".repeat(30) + "\n")) {
            Files.writeString(checkpoints, torn, StandardOpenOption.APPEND);
            try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
                assertThat(journal.status().notices()).hasSize(1);
                assertThat(Files.readString(checkpoints)).isEqualTo(line);
                assertThat(Recorded.entries(journal))
                        .last()
                        .extracting(Entry::kind)
                        .isEqualTo("journal.tail-set-aside");
            }
            assertThat(Recorded.verified(home, new FaultyDisk().unforced()).findings())
                    .isEmpty();
            line = Files.readString(checkpoints);
        }
    }

    @Test
    void a_checkpoint_whose_note_was_not_placed_is_believed() throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, 3);
        String older = Files.readString(Recorded.files(home).note());
        try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
            journal.append(Recorded.notes(3, 2));
        }
        Files.writeString(Recorded.files(home).note(), older);
        assertThat(Recorded.verified(home, new FaultyDisk().unforced()).findings())
                .isEmpty();
        Files.delete(Recorded.files(home).note());
        assertThat(Recorded.verified(home, new FaultyDisk().unforced()).findings())
                .isEmpty();
    }

    private Path copy(Path home, String name) {
        Path copy = folder.resolve(name);
        Recorded.copy(home, copy);
        return copy;
    }

    private static void truncate(Path file, long length) throws IOException {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            open.setLength(length);
        }
    }

    private static int startOfLast(byte[] segment) {
        int skipped = lines(segment, segment.length) - LAST;
        int at = 0;
        for (int line = 0; line < skipped; at++) {
            line += segment[at] == '\n' ? 1 : 0;
        }
        return at;
    }

    private static int lines(byte[] segment, int end) {
        int lines = 0;
        for (int i = 0; i < end; i++) {
            lines += segment[i] == '\n' ? 1 : 0;
        }
        return lines;
    }

    private static int lineEnd(byte[] segment) {
        return Stream.iterate(0, i -> i + 1)
                .filter(i -> segment[i] == '\n')
                .findFirst()
                .orElseThrow();
    }
}
