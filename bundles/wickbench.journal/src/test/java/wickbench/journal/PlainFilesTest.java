package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder is looked through while others are at work in it. */
class PlainFilesTest {
    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws IOException {
        Files.createDirectories(folder.resolve("in/deep"));
        for (String name : List.of("b", "a", "in/c", "in/deep/d")) {
            Files.writeString(folder.resolve(name), name);
        }
    }

    @Test
    void all_plain_files_are_found_in_the_order_of_their_paths() throws IOException {
        assertThat(PlainFiles.below(folder))
                .containsExactly(
                        folder.resolve("a"), folder.resolve("b"), folder.resolve("in/c"), folder.resolve("in/deep/d"));
        assertThat(PlainFiles.below(folder.resolve("nowhere"))).isEmpty();
    }

    @Test
    void a_link_to_the_folder_is_followed_and_one_within_it_is_no_plain_file() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("in"));
        assertThat(PlainFiles.below(link)).containsExactly(link.resolve("c"), link.resolve("deep/d"));
        assertThat(PlainFiles.below(folder)).hasSize(4);
    }

    @Test
    void a_file_that_goes_away_meanwhile_is_left_out() throws IOException {
        PlainFiles disturbed = new PlainFiles() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                removeOther(file);
                return super.visitFile(file, attributes);
            }
        };
        Files.walkFileTree(folder.resolve("two"), disturbed);
        assertThat(disturbed.found()).isEmpty();
        Files.createDirectory(folder.resolve("two"));
        Files.writeString(folder.resolve("two/a"), "");
        Files.writeString(folder.resolve("two/b"), "");
        Files.walkFileTree(folder.resolve("two"), disturbed);
        assertThat(disturbed.found()).hasSize(1);
    }

    /** Removes what the folder has already said that it holds. */
    private static void removeOther(Path file) {
        try {
            Files.delete(file.resolveSibling(file.endsWith("a") ? "b" : "a"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void what_cannot_be_looked_at_is_no_empty_folder() {
        Path impossible = folder.resolve("x".repeat(300));
        assertThatThrownBy(() -> Files.walkFileTree(impossible, new PlainFiles()))
                .isInstanceOf(FileSystemException.class);
    }
}
