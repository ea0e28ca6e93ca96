package wickbench.journal.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.ServiceReference;
import wickbench.api.backup.Backup;
import wickbench.api.backup.BackupPlan;
import wickbench.api.backup.Backups;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.SharedFiles;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Stations;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** All services of the bundle speak for the one journal of the program. */
class ServicesTest {
    private static final StationId BENCH = new StationId("bench");
    private static final Founding FOUNDING = new Founding(BENCH, ZoneOffset.UTC, OptionalLong.empty());

    @TempDir
    Path folder;

    private final PlayedFramework framework = new PlayedFramework();
    private OpenJournal open;
    private Journal journal;

    @BeforeEach
    void found() {
        open = new OpenJournal(framework.context(), new HomeFolder(folder.resolve("home")));
        journal = new JournalService(open);
        assertThat(journal.founding()).isEmpty();
        assertThat(journal.found(FOUNDING)).isEqualTo(FOUNDING);
    }

    @AfterEach
    void close() {
        open.close();
    }

    private Entry note(int number) {
        return journal.append(List.of(new Draft(
                        new UUID(1, number),
                        new PersonId("rivera"),
                        "note.written",
                        1,
                        Json.object().with("n", number))))
                .get(0);
    }

    @Test
    void entries_are_recorded_read_signed_and_verified() {
        Entry note = note(1);
        assertThat(journal.founding()).contains(FOUNDING);
        assertThat(journal.stations()).containsExactly(BENCH);
        assertThat(journal.size(BENCH)).isEqualTo(2);
        assertThat(journal.entry(note.ref())).contains(note);
        assertThat(journal.line(note.ref())).get().asString().contains("note.written");
        List<Entry> read = new ArrayList<>();
        journal.read(BENCH, 1, read::add);
        assertThat(read).containsExactly(note);
        assertThat(journal.checkpoint())
                .hasValueSatisfying(made -> assertThat(made.size()).isEqualTo(2));
        assertThat(journal.checkpoint(BENCH)).isEqualTo(journal.checkpoint());
        assertThat(journal.keyFingerprint(BENCH)).isEqualTo(journal.status().keyFingerprint());
        assertThat(journal.keyFingerprint(BENCH)).isPresent();
        assertThat(journal.verify(Progress.NONE).entries()).isEqualTo(2);
    }

    @Test
    void entries_are_proved_compared_and_exported() {
        Entry note = note(1);
        Proofs proofs = new ProofService(open);
        assertThat(proofs.prove(note.ref(), OptionalLong.empty()).leaf()).isEqualTo(note.leaf());
        String signed = journal.checkpoint().orElseThrow().note();
        assertThat(proofs.compare(signed).result()).isEqualTo(Comparison.Result.CONSISTENT);
        Path tiles = folder.resolve("tiles");
        assertThat(proofs.exportTiles(BENCH, tiles, Progress.NONE).size()).isEqualTo(2);
        assertThat(tiles.resolve("checkpoint")).hasContent(signed);
    }

    /** A file beside the journal, which one station has and another wants. */
    private record Photos(List<String> wanted) implements SharedFiles {
        @Override
        public String folder() {
            return "photos";
        }
    }

    @Test
    void journal_and_files_are_exchanged_for_as_long_as_somebody_knows_the_files() throws IOException {
        Stations stations = new StationsService(open);
        assertThat(stations.sharing().share()).isEmpty();
        assertThat(stations.exchange().share()).isEmpty();
        ServiceReference<SharedFiles> photos = PlayedFramework.reference();
        ServiceReference<SharedFiles> gone = PlayedFramework.reference();
        framework.put(photos, new Photos(List.of()));
        open.share(photos);
        open.share(gone);
        Path share = Files.createDirectory(folder.resolve("share"));
        photo("one");
        stations.share(Optional.of(share));
        assertThat(stations.exchange().share()).contains(share);
        assertThat(stations.sharing().notices()).isEmpty();
        assertThat(share.resolve("bench/photos").resolve(name("one"))).exists();
        open.unshare(photos);
        photo("two");
        note(1);
        stations.exchange();
        assertThat(share.resolve("bench/photos").resolve(name("two"))).doesNotExist();
    }

    private void photo(String text) throws IOException {
        Path photos = Files.createDirectories(folder.resolve("home/photos"));
        Files.writeString(photos.resolve(name(text)), text);
    }

    private static String name(String text) {
        return Hash.ofContent(text).hex() + ".txt";
    }

    @Test
    void the_home_is_backed_up_and_made_anew() {
        note(1);
        Backups backups = new BackupService(new HomeFolder(folder.resolve("home")), open);
        Backup made = backups.backUp(folder.resolve("made"), Progress.NONE);
        assertThat(backups.state().last()).contains(made);
        Backup into = backups.backUpInto(folder.resolve("into"), Progress.NONE);
        assertThat(into.folder()).hasParent(folder.resolve("into"));
        BackupPlan plan = new BackupPlan(folder.resolve("planned"), 1, 2);
        backups.plan(Optional.of(plan));
        assertThat(backups.state().plan()).contains(plan);
        assertThat(backups.backUpByPlan(Progress.NONE).folder()).hasParent(folder.resolve("planned"));
        Path anew = folder.resolve("anew");
        assertThat(backups.restore(made.folder(), anew, Optional.empty(), Progress.NONE)
                        .verification()
                        .entries())
                .isEqualTo(2);
        assertThat(anew.resolve("journal/bench")).isDirectory();
    }
}
