package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Hash;
import wickbench.api.journal.SharedFiles;
import wickbench.journal.Site.Machine;

/** Files beside the journal go through the shared folder, named by what is in them. */
class FileExchangeTest {
    private static final byte[] LABEL = "a label".getBytes(StandardCharsets.UTF_8);
    private static final String NAME = Hash.ofContent(LABEL).hex() + ".txt";

    @TempDir
    Path root;

    private final List<String> still = new CopyOnWriteArrayList<>();
    private Site site;
    private Machine bench;
    private Path shown;

    @BeforeEach
    void show() throws IOException {
        site = new Site(root);
        bench = site.station("bench");
        shown = site.share().resolve("bench/files/ab").resolve(NAME);
        Files.createDirectories(shown.getParent());
        Files.write(shown, LABEL);
    }

    @AfterEach
    void close() {
        site.close();
    }

    /** What another station wants of the folder {@code files}. */
    private record Wanting(List<String> wanted) implements SharedFiles {
        @Override
        public String folder() {
            return "files";
        }
    }

    private JournalFolder reader(String... wanted) {
        still.addAll(List.of(wanted));
        SharedFiles files = new Wanting(still);
        JournalFolder reader =
                JournalFolder.open(new HomeFolder(root.resolve("reader")), entries -> {}, () -> List.of(files));
        reader.found(Site.founding("reader"));
        reader.others().share(Optional.of(site.share()));
        reader.others().exchange();
        return reader;
    }

    @Test
    void what_is_wanted_is_fetched_and_shown_on() throws IOException {
        try (JournalFolder reader = reader("ab/" + NAME, "cd/" + "0".repeat(64) + ".txt")) {
            assertThat(reader.others().sharing().notices()).isEmpty();
            assertThat(root.resolve("reader/files/ab").resolve(NAME)).hasBinaryContent(LABEL);
        }
        assertThat(site.share().resolve("reader/files/ab").resolve(NAME)).hasBinaryContent(LABEL);
        assertThat(root.resolve("reader/files/cd")).doesNotExist();
    }

    @Test
    void a_file_that_is_still_on_its_way_or_anothers_is_not_taken() throws IOException {
        Files.writeString(shown, "a lab");
        try (JournalFolder reader = reader("ab/" + NAME)) {
            assertThat(root.resolve("reader/files")).doesNotExist();
            Files.write(shown, LABEL);
            reader.append(Recorded.notes(0, 1));
            reader.others().exchange();
            assertThat(root.resolve("reader/files/ab").resolve(NAME)).hasBinaryContent(LABEL);
        }
    }

    @Test
    void what_was_removed_here_goes_there_too_and_what_is_no_such_file_stays() throws IOException {
        try (JournalFolder reader = reader("ab/" + NAME)) {
            Path other = site.share().resolve("reader/files/notes.txt");
            Files.writeString(other, "mine");
            still.clear();
            Files.delete(root.resolve("reader/files/ab").resolve(NAME));
            Files.writeString(root.resolve("reader/files/half.new"), "");
            reader.append(Recorded.notes(0, 1));
            reader.others().exchange();
            assertThat(site.share().resolve("reader/files/ab").resolve(NAME)).doesNotExist();
            assertThat(other).hasContent("mine");
            assertThat(site.share().resolve("reader/files/half.new")).doesNotExist();
        }
    }

    @Test
    @Tag("long")
    void what_hangs_at_the_end_is_told_to_stop_and_the_home_is_let_go() throws InterruptedException {
        CountDownLatch asked = new CountDownLatch(1);
        CountDownLatch never = new CountDownLatch(1);
        JournalFolder reader = JournalFolder.open(new HomeFolder(root.resolve("reader")), entries -> {}, () -> {
            asked.countDown();
            try {
                never.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException("told to stop", e);
            }
            return List.of();
        });
        reader.found(Site.founding("reader"));
        reader.others().share(Optional.of(site.share()));
        asked.await();
        reader.close();
        assertThat(Recorded.verified(root.resolve("reader")).holds()).isTrue();
    }
}
