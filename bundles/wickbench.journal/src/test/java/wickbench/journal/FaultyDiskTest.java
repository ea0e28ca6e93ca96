package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;

/** A disk that is full, that fails to force, or that may not be written: nothing is claimed that did not happen. */
class FaultyDiskTest {
    @TempDir
    Path folder;

    private final FaultyDisk disk = new FaultyDisk();

    @Test
    void a_disk_full_at_any_write_refuses_the_append_and_works_again_once_there_is_space() {
        boolean refused = true;
        for (int writes = 0; refused; writes++) {
            Path home = folder.resolve("full-" + writes);
            Recorded.closed(home, 3);
            refused = fullAfter(home, writes);
            assertThat(Recorded.verified(home).findings()).isEmpty();
        }
    }

    /** Appends across the border of a checkpoint; tells whether the disk stood in the way. */
    private boolean fullAfter(Path home, int writes) {
        try (JournalFolder journal = Recorded.open(home, disk)) {
            disk.fullAfter(writes);
            long before = journal.size(Recorded.STATION);
            boolean refused = refused(() -> journal.append(Recorded.notes(3, 1_000)));
            List<String> notices = journal.status().notices();
            assertThat(journal.size(Recorded.STATION)).isEqualTo(refused ? before : before + 1_000);
            disk.withSpace();
            assertThat(journal.append(Recorded.notes(2_000, 2))).hasSize(2);
            assertThat(journal.checkpoint()).map(Checkpoint::size).contains(journal.size(Recorded.STATION));
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
            return refused || !notices.isEmpty();
        }
    }

    @Test
    void a_disk_full_at_the_border_of_a_segment_takes_back_both_files() {
        Recorded.closed(folder, StationFolder.SEGMENT - 3);
        try (JournalFolder journal = Recorded.open(folder, disk)) {
            disk.fullAfter(1);
            assertThat(refused(() -> journal.append(Recorded.notes(0, 5)))).isTrue();
            disk.withSpace();
            journal.append(Recorded.notes(0, 5));
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        }
        assertThat(Recorded.entries(folder)).hasSize(StationFolder.SEGMENT + 3);
    }

    @Test
    void a_full_disk_that_cannot_be_cut_back_ends_recording() {
        Recorded.closed(folder, 3);
        try (JournalFolder journal = Recorded.open(folder, disk)) {
            disk.fullAfter(0).withoutTruncate();
            assertThat(refused(() -> journal.append(Recorded.notes(0, 1)))).isTrue();
            disk.withSpace();
            assertThat(refused(() -> journal.append(Recorded.notes(0, 1)))).isTrue();
            assertThat(journal.status().readOnly()).isPresent();
            assertThat(Recorded.entries(journal)).hasSize(4);
        }
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(journal.status().notices()).hasSize(1);
            assertThat(journal.append(Recorded.notes(0, 1))).hasSize(1);
        }
    }

    @Test
    void a_force_that_fails_once_ends_recording_and_is_never_tried_again() {
        Recorded.closed(folder, 3);
        try (JournalFolder journal = Recorded.open(folder, disk)) {
            List<Entry> before = Recorded.entries(journal);
            disk.forceFailsAfter(0);
            assertThatThrownBy(() -> journal.append(Recorded.notes(3, 2)))
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("journal.failed"))
                    .hasMessageContaining("Input/output error");
            assertThat(refused(() -> journal.append(Recorded.notes(3, 2)))).isTrue();
            assertThat(Recorded.entries(journal)).isEqualTo(before);
            assertThat(journal.status().readOnly()).isPresent();
            assertThat(journal.checkpoint()).map(Checkpoint::size).contains(4L);
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        }
        assertThat(Recorded.verified(folder).findings()).isEmpty();
    }

    @Test
    void a_force_that_fails_under_a_checkpoint_takes_back_no_entry_and_ends_recording() {
        try (JournalFolder journal = Recorded.open(folder, disk)) {
            journal.append(Recorded.notes(0, 3));
            disk.forceFailsAfter(0);
            assertThat(refused(journal::checkpoint)).isTrue();
            assertThat(refused(() -> journal.append(Recorded.notes(3, 1)))).isTrue();
            assertThat(refused(journal::checkpoint)).isTrue();
            assertThat(Recorded.entries(journal)).hasSize(4);
        }
        assertThat(Recorded.entries(folder)).hasSize(4);
    }

    @Test
    void a_checkpoint_that_finds_no_space_is_told_and_tried_again() {
        try (JournalFolder journal = Recorded.open(folder, disk)) {
            journal.append(Recorded.notes(0, 3));
            for (int writes : new int[] {0, 1}) {
                disk.fullAfter(writes);
                assertThat(refused(journal::checkpoint)).isTrue();
                disk.withSpace();
            }
            assertThat(journal.checkpoint()).map(Checkpoint::size).contains(4L);
        }
        assertThat(Recorded.verified(folder).findings()).isEmpty();
    }

    @Test
    void a_home_that_cannot_be_written_is_read_and_refuses_to_record() throws IOException {
        Recorded.killed(folder.resolve("home"), 3);
        Path home = folder.resolve("home");
        Path segment = Recorded.files(home).segment(0);
        Files.writeString(segment, "{\"at", StandardOpenOption.APPEND);
        long length = Files.size(segment);
        try (JournalFolder journal = Recorded.open(home, disk.readOnly())) {
            assertThat(Recorded.entries(journal)).hasSize(4);
            assertThat(journal.status().readOnly().orElseThrow()).contains(home.toString());
            assertThat(journal.status().notices()).hasSize(1);
            assertThat(journal.checkpoint()).isEmpty();
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
            assertThatThrownBy(() -> journal.append(Recorded.notes(0, 1)))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining(home.toString());
        }
        assertThat(Files.size(segment)).isEqualTo(length);
    }

    @Test
    void an_empty_home_that_cannot_be_written_is_not_founded() {
        try (JournalFolder journal = Recorded.open(folder, disk.readOnly())) {
            assertThat(refused(() -> journal.append(Recorded.notes(0, 1)))).isTrue();
            assertThat(journal.founding()).isEmpty();
        }
    }

    @Test
    void a_folder_that_is_a_file_is_named() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        try (JournalFolder journal = Recorded.open(file)) {
            assertThat(journal.status().readOnly().orElseThrow()).contains(file.toString());
        }
    }

    @Test
    void a_home_is_founded_again_after_a_disk_that_was_full_at_any_write() {
        for (int writes = 0; writes < 4; writes++) {
            Path home = folder.resolve("home-" + writes);
            try (JournalFolder journal = Recorded.open(home, disk)) {
                disk.fullAfter(writes);
                refused(() -> journal.append(Recorded.notes(0, 1)));
                disk.withSpace();
                assertThat(journal.append(Recorded.notes(0, 1))).hasSize(1);
            }
            assertThat(Recorded.verified(home).findings()).isEmpty();
        }
    }

    @Test
    void what_another_program_wrote_at_the_end_is_never_written_over() throws IOException {
        Recorded.closed(folder, 3);
        Path segment = Recorded.files(folder).segment(0);
        try (JournalFolder journal = Recorded.open(folder)) {
            Files.writeString(segment, "stranger", StandardOpenOption.APPEND);
            assertThat(refused(() -> journal.append(Recorded.notes(0, 1)))).isTrue();
            assertThat(journal.status().readOnly()).isPresent();
        }
        assertThat(Files.readString(segment)).endsWith("stranger");
    }

    private static boolean refused(Runnable act) {
        try {
            act.run();
            return false;
        } catch (Refusal e) {
            assertThat(e.code()).isEqualTo("journal.failed");
            return true;
        }
    }
}
