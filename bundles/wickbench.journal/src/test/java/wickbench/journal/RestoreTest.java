package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.Backup;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Entry;
import wickbench.testing.Schemas;

/** A home is made again from its back-up, into an empty folder only. */
class RestoreTest {
    @TempDir
    Path folder;

    private CopiedHome copied;

    @BeforeEach
    void record() throws IOException {
        copied = CopiedHome.recorded(folder);
    }

    @Test
    void what_came_after_a_back_up_is_counted_where_a_newer_checkpoint_is_known() {
        copied.backUp();
        String known;
        try (JournalFolder journal = Recorded.open(copied.home())) {
            journal.append(Recorded.notes(CopiedHome.NOTES, 7));
            known = journal.checkpoint().map(Checkpoint::note).orElseThrow();
        }
        Comparison comparison = copied.restore(Optional.of(known)).known().orElseThrow();
        assertThat(comparison.result()).isEqualTo(Comparison.Result.OLDER);
        assertThat(comparison.text()).contains("the newest 7 are missing");
    }

    @Test
    void the_first_thing_recorded_in_a_restored_home_is_that_it_was() throws IOException {
        Backup made = copied.backUp();
        copied.restore(Optional.empty());
        try (JournalFolder journal = Recorded.open(copied.target())) {
            assertThat(journal.status().notices()).singleElement().asString().contains("which has 51 entries");
            assertThat(journal.size(Recorded.STATION))
                    .isEqualTo(made.checkpoint().size());
            assertThat(journal.append(List.of(Recorded.note(CopiedHome.NOTES)))).hasSize(1);
        }
        List<Entry> entries = Recorded.entries(copied.target());
        Entry said = entries.get(CopiedHome.NOTES + 1);
        assertThat(said.kind()).isEqualTo("journal.restored");
        assertThat(Schemas.published()
                        .errors("journal.restored-1.schema.json", said.body().canonical()))
                .isEmpty();
        assertThat(entries).hasSize(CopiedHome.NOTES + 3);
        try (JournalFolder journal = Recorded.open(copied.target())) {
            journal.append(List.of(Recorded.note(CopiedHome.NOTES + 1)));
            assertThat(journal.status().notices()).isEmpty();
            assertThat(journal.size(Recorded.STATION)).isEqualTo(CopiedHome.NOTES + 4);
        }
    }

    @Test
    void a_home_that_holds_something_is_never_restored_into() throws IOException {
        copied.backUp();
        Files.createDirectories(copied.target());
        Files.writeString(copied.target().resolve("mine.txt"), "mine");
        assertThatThrownBy(() -> copied.restore(Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("holds something already");
        assertThat(CopiedHome.files(copied.target())).containsExactly("mine.txt");
    }

    @Test
    void an_empty_home_and_one_with_the_lock_of_an_ended_program_are_empty() throws IOException {
        copied.backUp();
        Files.createDirectories(copied.target());
        Files.writeString(copied.target().resolve("lock"), "");
        assertThat(copied.restore(Optional.empty()).verification().holds()).isTrue();
    }

    @Test
    void a_home_with_a_folder_in_place_of_the_lock_is_not_empty() throws IOException {
        copied.backUp();
        Files.createDirectories(copied.target().resolve("lock"));
        assertThatThrownBy(() -> copied.restore(Optional.empty())).hasMessageContaining("holds something already");
    }

    @Test
    void a_restore_that_is_stopped_at_any_point_leaves_nothing() throws IOException {
        copied.backUp();
        int[] asked = {0};
        for (int stop = 1; !Files.exists(copied.target()); stop++) {
            int at = stop;
            asked[0] = 0;
            try {
                copied.restore(Optional.empty(), (done, total) -> ++asked[0] < at);
            } catch (Refusal e) {
                assertThat(e.code()).isEqualTo("backup.stopped");
                assertThat(folder.toFile().list()).containsExactlyInAnyOrder("home", "backup");
            }
        }
        assertThat(Recorded.entries(copied.target())).isEqualTo(Recorded.entries(copied.home()));
    }
}
