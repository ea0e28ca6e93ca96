package wickbench.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheFolderTest {

    @TempDir
    Path parent;

    @Test
    void a_folder_is_private_while_open_and_gone_when_closed() throws IOException {
        Path folder;
        try (var one = CacheFolder.below(parent);
                var two = CacheFolder.below(parent)) {
            folder = one.folder();
            Files.writeString(folder.resolve("state"), "x");
            assertThat(two.folder()).isNotEqualTo(folder).exists();
        }
        assertThat(folder).doesNotExist();
    }

    @Test
    void what_a_killed_process_left_behind_is_swept_away() throws IOException {
        Path left =
                Files.createDirectories(parent.resolve("run-0-dead/bundles")).getParent();
        try (var mine = CacheFolder.below(parent)) {
            assertThat(mine.folder()).exists();
            assertThat(left).doesNotExist();
        }
    }

    @Test
    void what_another_process_holds_stays() throws Exception {
        Process other = new ProcessBuilder(
                        java(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        HoldCache.class.getName(),
                        parent.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var told = other.inputReader()) {
            Path held = Path.of(told.readLine());
            try (var mine = CacheFolder.below(parent)) {
                assertThat(mine.folder()).exists();
                assertThat(held).exists();
            }
        } finally {
            other.destroyForcibly().waitFor();
        }
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }
}
