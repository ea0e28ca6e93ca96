package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.Backup;
import wickbench.api.backup.Restored;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;
import wickbench.proof.Frontier;
import wickbench.proof.OpenKey;
import wickbench.testing.Meets;
import wickbench.testing.Schemas;

/** A home is copied while it lives, and made again from the copy. */
class BackupTest {
    private static final int NOTES = 50;

    @TempDir
    Path folder;

    private Path home;
    private Path backup;
    private Path target;

    @BeforeEach
    void record() throws IOException {
        home = folder.resolve("home");
        backup = folder.resolve("backup");
        target = folder.resolve("new");
        Recorded.closed(home, NOTES);
        Files.createDirectories(home.resolve("people/ada"));
        Files.writeString(home.resolve("people/ada/" + "0".repeat(64) + ".json"), "{}");
        Files.createDirectories(home.resolve("index/h2"));
        Files.writeString(home.resolve("index/h2/house.mv.db"), "can be made again");
    }

    private static Backup backUp(JournalFolder journal, Path home, Path to) {
        return new HomeBackups(new HomeFolder(home), () -> journal).backUp(to, Progress.NONE);
    }

    private Backup backUp() {
        try (JournalFolder journal = Recorded.open(home)) {
            return backUp(journal, home, backup);
        }
    }

    private Restored restore(Optional<String> known) {
        HomeBackups nowhere = new HomeBackups(new HomeFolder(target), () -> {
            throw new AssertionError("restoring opens no journal");
        });
        return nowhere.restore(backup, target, known, Progress.NONE);
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> folder.relativize(path).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    @Meets({"21 CFR 117.305(a)", "EU GMP Annex 11 4.8", "EU GMP Annex 11 7.2"})
    void a_home_made_from_a_back_up_holds_the_same_and_verifies() throws IOException {
        Backup made = backUp();
        Restored restored = restore(Optional.empty());
        assertThat(restored.verification().holds()).isTrue();
        assertThat(restored.verification().root()).isEqualTo(made.checkpoint().root());
        assertThat(Recorded.entries(target)).isEqualTo(Recorded.entries(home));
        assertThat(target.resolve("people/ada/" + "0".repeat(64) + ".json")).hasContent("{}");
        assertThat(target.resolve("index")).doesNotExist();
        assertThat(files(backup)).noneMatch(name -> name.contains("index") || name.contains("lock"));
    }

    @Test
    void a_back_up_says_of_itself_what_the_published_schema_asks_for() throws IOException {
        backUp();
        assertThat(Schemas.published().errors("backup-1.schema.json", Files.readString(backup.resolve("backup.json"))))
                .isEmpty();
        assertThat(Schemas.published().errors("backups-1.schema.json", Files.readString(home.resolve("backups.json"))))
                .isEmpty();
    }

    @Test
    void a_back_up_and_the_key_in_it_are_for_their_owner_only() throws IOException {
        backUp();
        restore(Optional.empty());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup)))
                .isEqualTo("rwx------");
        for (Path root : List.of(backup.resolve("home"), target)) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(root.resolve("keys/station-1.pem"))))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void what_is_recorded_while_a_back_up_is_made_does_not_disturb_it() throws Exception {
        AtomicBoolean over = new AtomicBoolean();
        try (JournalFolder journal = Recorded.open(home)) {
            Thread recorder = new Thread(() -> {
                for (int i = 1_000; !over.get(); i++) {
                    journal.append(List.of(Recorded.note(i)));
                }
            });
            recorder.start();
            for (int i = 0; i < 5; i++) {
                backup = folder.resolve("backup-" + i);
                target = folder.resolve("new-" + i);
                Backup made = backUp(journal, home, backup);
                Restored restored = restore(Optional.empty());
                assertThat(restored.verification().entries())
                        .isEqualTo(made.checkpoint().size());
            }
            over.set(true);
            recorder.join();
        }
    }

    @Test
    void what_came_after_a_back_up_is_counted_where_a_newer_checkpoint_is_known() {
        backUp();
        String known;
        try (JournalFolder journal = Recorded.open(home)) {
            journal.append(Recorded.notes(NOTES, 7));
            known = journal.checkpoint().map(Checkpoint::note).orElseThrow();
        }
        Comparison comparison = restore(Optional.of(known)).known().orElseThrow();
        assertThat(comparison.result()).isEqualTo(Comparison.Result.OLDER);
        assertThat(comparison.text()).contains("the newest 7 are missing");
    }

    @Test
    void the_first_thing_recorded_in_a_restored_home_is_that_it_was() throws IOException {
        Backup made = backUp();
        restore(Optional.empty());
        try (JournalFolder journal = Recorded.open(target)) {
            assertThat(journal.status().notices()).singleElement().asString().contains("which has 51 entries");
            assertThat(journal.size(Recorded.STATION))
                    .isEqualTo(made.checkpoint().size());
            assertThat(journal.append(List.of(Recorded.note(NOTES)))).hasSize(1);
        }
        List<Entry> entries = Recorded.entries(target);
        Entry said = entries.get(NOTES + 1);
        assertThat(said.kind()).isEqualTo("journal.restored");
        assertThat(Schemas.published()
                        .errors("journal.restored-1.schema.json", said.body().canonical()))
                .isEmpty();
        assertThat(entries).hasSize(NOTES + 3);
        try (JournalFolder journal = Recorded.open(target)) {
            journal.append(List.of(Recorded.note(NOTES + 1)));
            assertThat(journal.status().notices()).isEmpty();
            assertThat(journal.size(Recorded.STATION)).isEqualTo(NOTES + 4);
        }
    }

    @Test
    void a_home_that_holds_something_is_never_restored_into() throws IOException {
        backUp();
        Files.createDirectories(target);
        Files.writeString(target.resolve("mine.txt"), "mine");
        assertThatThrownBy(() -> restore(Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("holds something already");
        assertThat(files(target)).containsExactly("mine.txt");
    }

    @Test
    void an_empty_home_and_one_with_the_lock_of_an_ended_program_are_empty() throws IOException {
        backUp();
        Files.createDirectories(target);
        Files.writeString(target.resolve("lock"), "");
        assertThat(restore(Optional.empty()).verification().holds()).isTrue();
    }

    @Test
    void a_back_up_is_not_made_into_a_folder_that_holds_something_nor_into_the_home() {
        try (JournalFolder journal = Recorded.open(home)) {
            assertThatThrownBy(() -> backUp(journal, home, folder)).hasMessageContaining("holds something already");
            assertThatThrownBy(() -> backUp(journal, home, home.resolve("copy")))
                    .hasMessageContaining("lies in the home itself");
        }
    }

    @Test
    void a_home_without_an_entry_has_nothing_to_back_up() {
        home = folder.resolve("empty");
        assertThatThrownBy(this::backUp).isInstanceOf(Refusal.class).hasMessageContaining("nothing to back up");
    }

    @Test
    void a_back_up_that_is_stopped_at_any_point_leaves_nothing() throws IOException {
        int[] asked = {0};
        try (JournalFolder journal = Recorded.open(home)) {
            HomeBackups backups = new HomeBackups(new HomeFolder(home), () -> journal);
            for (int stop = 1; !Files.exists(backup); stop++) {
                int at = stop;
                asked[0] = 0;
                try {
                    backups.backUp(backup, (done, total) -> ++asked[0] < at);
                } catch (Refusal e) {
                    assertThat(e.code()).isEqualTo("backup.stopped");
                    assertThat(folder.toFile().list()).containsExactly("home");
                }
            }
        }
        assertThat(asked[0]).isPositive();
        assertThat(restore(Optional.empty()).verification().holds()).isTrue();
    }

    @Test
    void a_home_that_is_reached_by_a_link_is_backed_up_whole() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), home);
        try (JournalFolder journal = Recorded.open(link)) {
            backUp(journal, link, backup);
        }
        assertThat(restore(Optional.empty()).verification().holds()).isTrue();
        assertThat(Recorded.entries(target)).isEqualTo(Recorded.entries(home));
    }

    @Test
    void half_a_back_up_is_none() throws IOException {
        backUp();
        Files.delete(backup.resolve("backup.json"));
        assertThatThrownBy(() -> restore(Optional.empty())).hasMessageContaining("is no whole back-up");
        assertThat(target).doesNotExist();
    }

    @Test
    @Meets("21 CFR 11.10(c)")
    void a_file_missing_or_altered_by_a_byte_is_named_and_nothing_is_restored() throws IOException {
        backUp();
        for (String name : files(backup.resolve("home"))) {
            Path file = backup.resolve("home").resolve(name);
            byte[] right = Files.readAllBytes(file);
            byte[] wrong = right.clone();
            wrong[wrong.length / 2] ^= 4;
            Files.write(file, wrong);
            assertThatThrownBy(() -> restore(Optional.empty()))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("1 of its files are missing or altered, first " + name);
            Files.delete(file);
            assertThatThrownBy(() -> restore(Optional.empty())).hasMessageContaining("first " + name);
            Files.write(file, right);
            assertThat(target).doesNotExist();
        }
        assertThat(restore(Optional.empty()).verification().holds()).isTrue();
    }

    @Test
    void a_list_altered_to_fit_an_altered_journal_is_found_by_its_seal() throws IOException {
        backUp();
        Path segment = backup.resolve("home/journal/station-1/entries-000000.jsonl");
        String before = wickbench.api.journal.Hash.ofContent(Files.readAllBytes(segment))
                .hex();
        Files.writeString(segment, Files.readString(segment).replace("\"n\":7,", "\"n\":8,"));
        String after = wickbench.api.journal.Hash.ofContent(Files.readAllBytes(segment))
                .hex();
        Path list = backup.resolve("backup.json");
        Files.writeString(list, Files.readString(list).replace(before, after));
        assertThatThrownBy(() -> restore(Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("does not verify, and nothing was restored");
        assertThat(target).doesNotExist();
    }

    @Test
    void a_list_that_leads_out_of_the_home_is_refused() throws IOException {
        backUp();
        Path list = backup.resolve("backup.json");
        for (String path : List.of("../outside.json", "/tmp/outside.json", "people/../../outside.json", ".")) {
            String text = Files.readString(list);
            String evil = text.replaceFirst("\"path\":\"[^\"]*\"", "\"path\":\"" + path + "\"");
            Files.writeString(list, evil);
            assertThatThrownBy(() -> restore(Optional.empty())).isInstanceOf(Refusal.class);
            Files.writeString(list, text);
        }
        assertThat(new ArrayList<>(List.of(folder.toFile().list()))).containsExactlyInAnyOrder("home", "backup");
    }

    @Test
    void what_belongs_to_the_running_program_or_is_half_written_is_left_out() throws IOException {
        for (String name : List.of("people/ada/half.new", "people/ada/half.part", "people/ada/empty")) {
            Files.writeString(home.resolve(name), name.endsWith("empty") ? "" : "half");
        }
        backUp();
        assertThat(files(backup.resolve("home"))).noneMatch(name -> name.matches(".*(half|empty|holder|lock).*"));
    }

    @Test
    void a_person_who_is_forgotten_meanwhile_is_not_in_the_copy() throws IOException {
        Path person = home.resolve("people/ada/" + "0".repeat(64) + ".json");
        try (JournalFolder journal = Recorded.open(home)) {
            backUpWatched(journal, (done, total) -> person.toFile().delete() || true);
        }
        assertThat(restore(Optional.empty()).verification().holds()).isTrue();
        assertThat(files(target)).noneMatch(name -> name.startsWith("people"));
    }

    private void backUpWatched(JournalFolder journal, Progress progress) {
        new HomeBackups(new HomeFolder(home), () -> journal).backUp(backup, progress);
    }

    @Test
    void a_journal_that_goes_away_meanwhile_is_no_back_up() throws IOException {
        Path entries = Recorded.files(home).segment(0);
        try (JournalFolder journal = Recorded.open(home)) {
            assertThatThrownBy(() -> backUpWatched(
                            journal, (done, total) -> entries.toFile().delete() || true))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("The copy does not verify");
        }
        assertThat(backup).doesNotExist();
    }

    @Test
    void a_journal_that_was_moved_or_changed_under_the_program_is_not_backed_up() throws IOException {
        Path entries = Recorded.files(home).segment(0);
        try (JournalFolder journal = Recorded.open(home)) {
            String right = Files.readString(entries);
            Files.writeString(entries, right.replace("\"n\":7,", "\"n\":8,"));
            assertThatThrownBy(() -> backUp(journal, home, backup)).hasMessageContaining("The copy does not verify");
            Files.writeString(entries, right);
            Path journals = home.resolve("journal");
            Cut cut = journal.cut();
            Files.move(journals, folder.resolve("moved"));
            assertThatThrownBy(() -> new BackupWriter(home, cut, Progress.NONE).write(backup, Instant.EPOCH))
                    .hasMessageContaining("The copy does not verify");
            Files.move(folder.resolve("moved"), journals);
        }
        assertThat(backup).doesNotExist();
    }

    @Test
    void a_restore_that_is_stopped_at_any_point_leaves_nothing() throws IOException {
        backUp();
        HomeBackups nowhere = new HomeBackups(new HomeFolder(target), () -> {
            throw new AssertionError("restoring opens no journal");
        });
        int[] asked = {0};
        for (int stop = 1; !Files.exists(target); stop++) {
            int at = stop;
            asked[0] = 0;
            try {
                nowhere.restore(backup, target, Optional.empty(), (done, total) -> ++asked[0] < at);
            } catch (Refusal e) {
                assertThat(e.code()).isEqualTo("backup.stopped");
                assertThat(folder.toFile().list()).containsExactlyInAnyOrder("home", "backup");
            }
        }
        assertThat(Recorded.entries(target)).isEqualTo(Recorded.entries(home));
    }

    @Test
    void a_list_that_names_another_checkpoint_than_the_journals_is_found() throws IOException {
        Backup made = backUp();
        Path list = backup.resolve("backup.json");
        String text = Files.readString(list);
        StationKey other = StationKey.fromSeed(new byte[OpenKey.BYTES]);
        Frontier longer = new Frontier();
        for (int leaf = 0; leaf < NOTES + 2; leaf++) {
            if (leaf == NOTES + 1) {
                refusedWith(text, made, Seal.sign(other, Recorded.STATION, longer, 1));
            }
            longer.add(new byte[32]);
        }
        refusedWith(text, made, Seal.sign(other, Recorded.STATION, longer, 1));
        Files.writeString(list, text);
        assertThat(restore(Optional.empty()).verification().holds()).isTrue();
    }

    private void refusedWith(String list, Backup made, Seal other) throws IOException {
        String mine = new Json.Text(made.checkpoint().note()).canonical();
        assertThat(list).contains(mine);
        Files.writeString(backup.resolve("backup.json"), list.replace(mine, new Json.Text(other.note()).canonical()));
        assertThatThrownBy(() -> restore(Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("does not verify, and nothing was restored");
        assertThat(target).doesNotExist();
    }

    @Test
    void a_home_with_a_folder_in_place_of_the_lock_is_not_empty() throws IOException {
        backUp();
        Files.createDirectories(target.resolve("lock"));
        assertThatThrownBy(() -> restore(Optional.empty())).hasMessageContaining("holds something already");
    }
}
