package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.testing.SmallDisk;

/** The disk takes no more while the index is written: it is said in plain words, nothing wrong is shown, and with room it goes on. */
class FullIndexDiskTest {
    private static final int ENTRIES = 8_000;

    @TempDir
    Path folder;

    @BeforeEach
    void record() {
        try (TestHome home = TestHome.in(folder)) {
            home.journal().append(Said.many("seen", ENTRIES));
        }
    }

    @ParameterizedTest
    @CsvSource({"read, 24", "read, 96", "read, 300", "rebuild, 96"})
    void no_room_for_the_index_is_told_and_with_room_the_same_program_goes_on(String how, int kilobytes)
            throws IOException, InterruptedException {
        byte[] journal = Files.readAllBytes(folder.resolve("journal/station-1/entries-000000.jsonl"));
        Process program = LimitedIndex.start(folder, how, kilobytes);
        try (BufferedReader said = program.inputReader()) {
            assertThat(said.readLine())
                    .startsWith("index.unwritten The index file in " + folder)
                    .contains("Nothing that was recorded is lost; make room on the disk and try again.");
            assertThat(SmallDisk.run("prlimit", "--pid", Long.toString(program.pid()), "--fsize=unlimited:unlimited"))
                    .isTrue();
            program.getOutputStream().write('\n');
            program.getOutputStream().flush();
            assertThat(said.readLine()).isEqualTo("rows " + (ENTRIES + 1));
            assertThat(said.readLine()).isEqualTo("holds true");
            assertThat(program.waitFor()).isZero();
        } finally {
            program.destroyForcibly();
        }
        assertThat(Files.readAllBytes(folder.resolve("journal/station-1/entries-000000.jsonl")))
                .isEqualTo(journal);
    }
}
