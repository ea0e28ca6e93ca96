package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real want of memory: the append fails whole and says why, the next one is kept, and the journal holds. */
@Tag("long")
class LittleMemoryTest {
    @TempDir
    Path folder;

    @Test
    void what_does_not_fit_into_memory_is_refused_whole() throws Exception {
        Process program = new ProcessBuilder(KilledRecorder.java(LittleMemoryRecorder.class, folder.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = program.inputReader()) {
            List<String> all = said.lines().toList();
            assertThat(all).endsWith("refused true", "kept true", "findings []");
            assertThat(all.subList(0, all.size() - 3))
                    .isNotEmpty()
                    .allMatch(line -> line.startsWith("There was not enough memory, so nothing was recorded."));
            assertThat(program.waitFor()).isZero();
        }
    }
}
