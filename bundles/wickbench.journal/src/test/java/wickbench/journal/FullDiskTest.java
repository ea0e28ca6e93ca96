package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.testing.SmallDisk;

/**
 * A real file system refuses for want of space: the append is refused in plain words, nothing of it is there, and once there is
 * space the same program records on.
 */
@Tag("long")
class FullDiskTest {
    /** The journal's files begin on a fresh page each, so these sizes end in the middle of different ones. */
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {64, 91, 128, 200})
    void a_disk_that_is_full(int kilobytes) throws Exception {
        Optional<SmallDisk> small = SmallDisk.mount(folder.resolve("disk"), kilobytes + 64 + "k");
        if (small.isEmpty()) {
            // where nobody may mount, the system's limit on the size of a file refuses in the same place
            a_file_that_may_not_grow(kilobytes);
            return;
        }
        try (SmallDisk disk = small.get()) {
            Path ballast = Files.write(disk.folder().resolve("ballast"), new byte[48 * 1024]);
            records(disk.folder().resolve("home"), List.of(), program -> Files.delete(ballast), "No space left");
        }
    }

    @Test
    void a_file_that_may_not_grow() throws Exception {
        a_file_that_may_not_grow(77);
    }

    private void a_file_that_may_not_grow(int kilobytes) throws Exception {
        List<String> limited = List.of("prlimit", "--fsize=" + kilobytes * 1024 + ":unlimited");
        records(
                folder.resolve("home"),
                limited,
                program -> assertThat(SmallDisk.run(
                                "prlimit", "--pid", Long.toString(program.pid()), "--fsize=unlimited:unlimited"))
                        .isTrue(),
                "File too large");
    }

    /** What makes space while the program waits. */
    private interface Freeing {
        void free(Process program) throws IOException;
    }

    private static void records(Path home, List<String> under, Freeing freeing, String reason) throws Exception {
        List<String> command = new ArrayList<>(under);
        command.addAll(KilledRecorder.java(FillingRecorder.class, home.toString()));
        Process program = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = program.inputReader()) {
            assertThat(said.readLine())
                    .startsWith("full journal.failed The disk refused to write to " + home)
                    .contains("nothing was recorded")
                    .contains(reason);
            long kept = Long.parseLong(said.readLine().substring("kept ".length()));
            freeing.free(program);
            program.getOutputStream().write('\n');
            program.getOutputStream().flush();
            assertThat(said.readLine()).isEqualTo("kept " + (kept + 20));
            assertThat(said.readLine()).isEqualTo("findings []");
            assertThat(program.waitFor()).isZero();
            assertThat(Recorded.entries(home)).hasSize((int) kept + 20);
        } finally {
            program.destroyForcibly();
        }
    }
}
