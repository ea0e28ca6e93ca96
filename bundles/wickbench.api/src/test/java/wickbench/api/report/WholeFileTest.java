package wickbench.api.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    Path folder;

    @Test
    void links_in_the_folder_lead_nobodys_file_astray() throws IOException {
        Path victim = Files.writeString(folder.resolve("victim"), "mine");
        Path file = folder.resolve("result.pdf");
        Files.createSymbolicLink(file, victim);
        Files.createSymbolicLink(folder.resolve("result.pdf.part"), victim);

        assertThat(write(file, "new", true)).isTrue();

        assertThat(victim).hasContent("mine");
        assertThat(file).hasContent("new");
        assertThat(Files.isSymbolicLink(file)).isFalse();
        assertThat(folder.resolve("result.pdf.part")).doesNotExist();
    }

    @Test
    void what_is_not_kept_leaves_the_one_before() throws IOException {
        Path file = Files.writeString(folder.resolve("rows.csv"), "old");
        assertThat(write(file, "half", false)).isFalse();
        assertThatThrownBy(() -> new WholeFile(file).write(bytes -> {
                    throw new IOException("the disk is full");
                }))
                .hasMessage("the disk is full");
        assertThat(file).hasContent("old");
        assertThat(folder.resolve("rows.csv.part")).doesNotExist();
    }

    private static boolean write(Path file, String text, boolean keep) throws IOException {
        return new WholeFile(file).write(bytes -> {
            bytes.write(text.getBytes(StandardCharsets.UTF_8));
            return keep;
        });
    }
}
