package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.Backup;
import wickbench.api.backup.Restored;
import wickbench.api.check.Refusal;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;
import wickbench.testing.Schemas;

/** A home is copied while it lives. */
class BackupTest {
    @TempDir
    Path folder;

    private CopiedHome copied;

    @BeforeEach
    void record() throws IOException {
        copied = CopiedHome.recorded(folder);
    }

    @Test
    @Meets({"21 CFR 117.305(a)", "EU GMP Annex 11 4.8", "EU GMP Annex 11 7.2"})
    void a_home_made_from_a_back_up_holds_the_same_and_verifies() throws IOException {
        Backup made = copied.backUp();
        Restored restored = copied.restore(Optional.empty());
        assertThat(restored.verification().holds()).isTrue();
        assertThat(restored.verification().root()).isEqualTo(made.checkpoint().root());
        assertThat(Recorded.entries(copied.target())).isEqualTo(Recorded.entries(copied.home()));
        assertThat(copied.target().resolve("people/ada/" + "0".repeat(64) + ".json"))
                .hasContent("{}");
        assertThat(copied.target().resolve("index")).doesNotExist();
        assertThat(CopiedHome.files(copied.backup()))
                .noneMatch(name -> name.contains("index") || name.contains("lock"));
    }

    @Test
    void a_back_up_says_of_itself_what_the_published_schema_asks_for() throws IOException {
        copied.backUp();
        assertThat(Schemas.published()
                        .errors(
                                "backup-1.schema.json",
                                Files.readString(copied.backup().resolve("backup.json"))))
                .isEmpty();
        assertThat(Schemas.published()
                        .errors(
                                "backups-1.schema.json",
                                Files.readString(copied.home().resolve("backups.json"))))
                .isEmpty();
    }

    @Test
    void a_back_up_and_the_key_in_it_are_for_their_owner_only() throws IOException {
        copied.backUp();
        copied.restore(Optional.empty());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copied.backup())))
                .isEqualTo("rwx------");
        for (Path root : List.of(copied.backup().resolve("home"), copied.target())) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(root.resolve("keys/station-1.pem"))))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void what_is_recorded_while_a_back_up_is_made_does_not_disturb_it() throws Exception {
        AtomicBoolean over = new AtomicBoolean();
        try (JournalFolder journal = Recorded.open(copied.home())) {
            Thread recorder = new Thread(() -> {
                for (int i = 1_000; !over.get(); i++) {
                    journal.append(List.of(Recorded.note(i)));
                }
            });
            recorder.start();
            for (int i = 0; i < 5; i++) {
                CopiedHome copy =
                        new CopiedHome(copied.home(), folder.resolve("backup-" + i), folder.resolve("new-" + i));
                Backup made = copy.backUp(journal, Progress.NONE);
                Restored restored = copy.restore(Optional.empty());
                assertThat(restored.verification().entries())
                        .isEqualTo(made.checkpoint().size());
            }
            over.set(true);
            recorder.join();
        }
    }

    @Test
    void a_back_up_is_not_made_into_a_folder_that_holds_something_nor_into_the_home() {
        try (JournalFolder journal = Recorded.open(copied.home())) {
            assertThatThrownBy(
                            () -> new CopiedHome(copied.home(), folder, copied.target()).backUp(journal, Progress.NONE))
                    .hasMessageContaining("holds something already");
            assertThatThrownBy(() -> new CopiedHome(copied.home(), copied.home().resolve("copy"), copied.target())
                            .backUp(journal, Progress.NONE))
                    .hasMessageContaining("lies in the home itself");
        }
    }

    @Test
    void a_home_without_an_entry_has_nothing_to_back_up() {
        CopiedHome empty = new CopiedHome(folder.resolve("empty"), copied.backup(), copied.target());
        assertThatThrownBy(empty::backUp).isInstanceOf(Refusal.class).hasMessageContaining("nothing to back up");
    }

    @Test
    void a_back_up_that_is_stopped_at_any_point_leaves_nothing() throws IOException {
        int[] asked = {0};
        try (JournalFolder journal = Recorded.open(copied.home())) {
            for (int stop = 1; !Files.exists(copied.backup()); stop++) {
                int at = stop;
                asked[0] = 0;
                try {
                    copied.backUp(journal, (done, total) -> ++asked[0] < at);
                } catch (Refusal e) {
                    assertThat(e.code()).isEqualTo("backup.stopped");
                    assertThat(folder.toFile().list()).containsExactly("home");
                }
            }
        }
        assertThat(asked[0]).isPositive();
        assertThat(copied.restore(Optional.empty()).verification().holds()).isTrue();
    }

    @Test
    void a_home_that_is_reached_by_a_link_is_backed_up_whole() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), copied.home());
        try (JournalFolder journal = Recorded.open(link)) {
            new CopiedHome(link, copied.backup(), copied.target()).backUp(journal, Progress.NONE);
        }
        assertThat(copied.restore(Optional.empty()).verification().holds()).isTrue();
        assertThat(Recorded.entries(copied.target())).isEqualTo(Recorded.entries(copied.home()));
    }

    @Test
    void what_belongs_to_the_running_program_or_is_half_written_is_left_out() throws IOException {
        for (String name : List.of("people/ada/half.new", "people/ada/half.part", "people/ada/empty")) {
            Files.writeString(copied.home().resolve(name), name.endsWith("empty") ? "" : "half");
        }
        copied.backUp();
        assertThat(CopiedHome.files(copied.backup().resolve("home")))
                .noneMatch(name -> name.matches(".*(half|empty|holder|lock).*"));
    }

    @Test
    void a_person_who_is_forgotten_meanwhile_is_not_in_the_copy() throws IOException {
        Path person = copied.home().resolve("people/ada/" + "0".repeat(64) + ".json");
        try (JournalFolder journal = Recorded.open(copied.home())) {
            copied.backUp(journal, (done, total) -> person.toFile().delete() || true);
        }
        assertThat(copied.restore(Optional.empty()).verification().holds()).isTrue();
        assertThat(CopiedHome.files(copied.target())).noneMatch(name -> name.startsWith("people"));
    }

    @Test
    void a_journal_that_goes_away_meanwhile_is_no_back_up() throws IOException {
        Path entries = Recorded.files(copied.home()).segment(0);
        try (JournalFolder journal = Recorded.open(copied.home())) {
            assertThatThrownBy(() -> copied.backUp(
                            journal, (done, total) -> entries.toFile().delete() || true))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("The copy does not verify");
        }
        assertThat(copied.backup()).doesNotExist();
    }

    @Test
    void a_journal_that_was_moved_or_changed_under_the_program_is_not_backed_up() throws IOException {
        Path entries = Recorded.files(copied.home()).segment(0);
        try (JournalFolder journal = Recorded.open(copied.home())) {
            String right = Files.readString(entries);
            Files.writeString(entries, right.replace("\"n\":7,", "\"n\":8,"));
            assertThatThrownBy(() -> copied.backUp(journal, Progress.NONE))
                    .hasMessageContaining("The copy does not verify");
            Files.writeString(entries, right);
            Path journals = copied.home().resolve("journal");
            Cut cut = journal.cut();
            Files.move(journals, folder.resolve("moved"));
            assertThatThrownBy(() ->
                            new BackupWriter(copied.home(), cut, Progress.NONE).write(copied.backup(), Instant.EPOCH))
                    .hasMessageContaining("The copy does not verify");
            Files.move(folder.resolve("moved"), journals);
        }
        assertThat(copied.backup()).doesNotExist();
    }
}
