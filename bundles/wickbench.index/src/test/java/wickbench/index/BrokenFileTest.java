package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** Files that are not what was left. */
class BrokenFileTest {
    private static final Tallies TALLIES = Tallies.named("tallies");

    /** H2 writes its file in blocks of so many bytes. */
    private static final int BLOCK = 4096;

    @TempDir
    Path folder;

    private TestHome home;

    @BeforeEach
    void fill() {
        home = TestHome.in(folder);
        home.views(TALLIES);
        home.journal().append(Said.many("seen", 3000));
        home.index().catchUp(Progress.NONE);
    }

    @AfterEach
    void close() {
        home.close();
    }

    /** What a disk or a person may do to a file. */
    enum Harm {
        EMPTIED,
        HALVED,
        ZEROED,
        ANOTHER_FILE;

        void to(Path file) throws IOException {
            long size = Files.size(file);
            switch (this) {
                case EMPTIED -> Files.write(file, new byte[0]);
                case HALVED -> cut(file, size / 2);
                case ZEROED -> Files.write(file, new byte[(int) size]);
                case ANOTHER_FILE -> Files.writeString(file, "a shopping list\n".repeat(2000));
            }
        }

        private static void cut(Path file, long size) throws IOException {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.truncate(size);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aBrokenFileIsMadeAgainFromTheJournal(Harm harm) throws IOException {
        List<String> kept = Dump.of(home.index(), "tallies", EntryIds.NAME);
        home.closeIndex();
        harm.to(home.file());
        home.reopen();
        assertThat(Dump.of(home.index(), "tallies", EntryIds.NAME)).isEqualTo(kept);
        assertThat(home.index().notices()).hasSizeLessThanOrEqualTo(1);
    }

    /** Damage that shows only when a table is read: one block after another is lost until one is noticed there. */
    @Test
    void aFileThatBreaksWhileItIsReadIsMadeAgainToo() throws IOException {
        List<String> kept = Dump.of(home.index(), "tallies", EntryIds.NAME);
        home.closeIndex();
        byte[] whole = Files.readAllBytes(home.file());
        byte[] sums = Files.readAllBytes(home.sums());
        for (int at = whole.length - BLOCK; at >= 0; at -= BLOCK) {
            byte[] broken = whole.clone();
            Arrays.fill(broken, at, at + BLOCK, (byte) 0);
            Files.write(home.file(), broken);
            Files.write(home.sums(), sums);
            home.reopen();
            home.index().catchUp(Progress.NONE);
            boolean opened = home.index().notices().isEmpty();
            List<String> read = Dump.of(home.index(), "tallies", EntryIds.NAME);
            if (opened && !home.index().notices().isEmpty()) {
                assertThat(read).isEqualTo(kept);
                return;
            }
            home.closeIndex();
        }
        fail("no lost block was noticed while reading");
    }

    @Test
    void aFileMadeAgainIsTold() throws IOException {
        home.closeIndex();
        Harm.ANOTHER_FILE.to(home.file());
        home.reopen();
        home.index().catchUp(Progress.NONE);
        assertThat(home.index().notices())
                .singleElement()
                .asString()
                .startsWith("The index file could not be read (")
                .endsWith("it was made again from the journal.");
    }

    /** As H2 may leave a file whose program is killed while H2 writes, in its own time, what is being changed. */
    enum Left {
        /** A row whose transaction nobody will ever end. */
        HELD("prepare commit never_ended"),
        /** A row of a transaction whose other rows are not there. */
        ALONE("commit");

        private final String end;

        Left(String end) {
            this.end = end;
        }
    }

    @ParameterizedTest
    @EnumSource
    void aRowThatADeadProgramLeftIsNoReasonToStop(Left left) throws IOException, SQLException {
        home.closeIndex();
        Draft next = new Draft(
                new UUID(1, 7),
                new PersonId("rivera"),
                Said.KIND,
                1,
                Json.object().with("word", "seen"));
        String file = home.file().toString();
        try (Connection dead = DriverManager.getConnection("jdbc:h2:" + file.substring(0, file.indexOf(".mv.db")));
                Statement statement = dead.createStatement()) {
            dead.setAutoCommit(false);
            statement.execute("insert into \"" + EntryIds.NAME + "\".entry (id, station, seq) values ('" + next.id()
                    + "', 'station-1', 3001)");
            statement.execute(left.end);
            statement.execute("checkpoint");
            statement.execute("shutdown immediately");
        } catch (SQLException closed) {
            assertThat(closed.getMessage()).contains("closed");
        }
        // check sums are kept by a program that ends in good order
        Files.delete(home.sums());
        home.reopen();
        home.journal().append(List.of(next));
        assertThat(home.index().find(next.id())).contains(new EntryRef(new StationId("station-1"), 3001));
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(3001);
        assertThat(home.index().notices()).singleElement().asString().endsWith("it was made again from the journal.");
    }

    /** What was taken in shortly before may be lost; nothing else, and nothing by halves. */
    @Test
    void whatWasNotWrittenYetComesFromTheJournalAgain() throws IOException {
        home.journal().append(Said.many("seen", 20));
        home.index().catchUp(Progress.NONE);
        Path killed = folder.resolve("killed");
        Files.copy(home.file(), killed);
        home.closeIndex();
        Files.copy(killed, home.file(), StandardCopyOption.REPLACE_EXISTING);
        Files.delete(home.sums());
        home.reopen();
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(3020);
        assertThat(home.index().verify(Progress.NONE).holds()).isTrue();
        assertThat(home.index().notices()).isEmpty();
    }

    @Test
    void anOlderFilePutBackCatchesUp() throws IOException {
        home.closeIndex();
        Path older = Files.copy(home.file(), folder.resolve("older"));
        Path sums = Files.copy(home.sums(), folder.resolve("older-sums"));
        home.reopen();
        home.journal().append(Said.many("seen", 500));
        home.index().catchUp(Progress.NONE);
        home.closeIndex();
        Files.copy(older, home.file(), StandardCopyOption.REPLACE_EXISTING);
        Files.copy(sums, home.sums(), StandardCopyOption.REPLACE_EXISTING);
        home.reopen();
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(3500);
        assertThat(home.index().notices()).isEmpty();
        home.closeIndex();
        Files.copy(older, home.file(), StandardCopyOption.REPLACE_EXISTING);
        home.reopen();
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(3500);
        assertThat(home.index().notices()).hasSize(1);
    }

    @Test
    void aDeletedFolderIsMadeAgain() {
        home.closeIndex();
        H2File.delete(folder.resolve("index"));
        home.reopen();
        assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(3000);
    }

    @Test
    void anIndexAheadOfItsJournalIsRefused() throws IOException {
        try (TestHome shorter = TestHome.in(folder.resolve("shorter"))) {
            shorter.views(TALLIES);
            shorter.journal().append(Said.many("seen", 2999));
            putIndexInto(shorter);
            refuses(shorter, "The index holds 3001 entries of station-1, its journal only 3000");
        }
    }

    @Test
    void anIndexOfAnotherJournalIsRefused() throws IOException {
        try (TestHome other = TestHome.in(folder.resolve("other"))) {
            other.views(TALLIES);
            other.journal().append(Said.many("faint", 3500));
            putIndexInto(other);
            refuses(other, "Entry station-1:3000 is not the one that the index took in");
            other.index().rebuild(Progress.NONE);
            assertThat(TALLIES.times(other.index(), "faint")).isEqualTo(3500);
        }
    }

    private void putIndexInto(TestHome other) throws IOException {
        home.closeIndex();
        Files.createDirectories(other.file().getParent());
        Files.copy(home.file(), other.file());
    }

    private static void refuses(TestHome home, String words) {
        // twice: refusing must not make the second time pass
        for (int time = 0; time < 2; time++) {
            assertThatThrownBy(() -> TALLIES.times(home.index(), "seen"))
                    .isInstanceOfSatisfying(
                            Refusal.class, no -> assertThat(no.code()).isEqualTo(Tampering.CODE))
                    .hasMessageStartingWith(words);
        }
    }
}
