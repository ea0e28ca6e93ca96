package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.ClosedChannelException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines of any length, in a file that may change while it is read. */
class LinesTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("lines");
    }

    private static List<Integer> lengths(Path file) throws IOException {
        List<Integer> lengths = new ArrayList<>();
        try (Lines lines = new Lines(file, 0, Long.MAX_VALUE)) {
            while (lines.next()) {
                lengths.add(lines.length());
                assertThat(lines.copy()).hasSize(lines.length());
            }
        }
        return lengths;
    }

    @Test
    void lines_longer_than_what_is_read_at_once_are_whole() throws IOException {
        List<Integer> sizes = List.of(5, 200_000, 0, 300_000, 7, 1_000_000, 3);
        Files.writeString(
                file, String.join("\n", sizes.stream().map("x"::repeat).toList()) + "\n");
        assertThat(lengths(file)).isEqualTo(sizes);
    }

    @Test
    void a_line_without_end_ends_the_walk_before_it_fills_the_memory() throws IOException {
        try (RandomAccessFile endless = new RandomAccessFile(file.toFile(), "rw")) {
            endless.write('\n');
            endless.setLength(4L * Lines.LONGEST);
        }
        try (Lines lines = new Lines(file, 0, Long.MAX_VALUE)) {
            assertThat(lines.next()).isTrue();
            assertThat(lines.next()).isFalse();
            assertThat(lines.left()).isEqualTo(4L * Lines.LONGEST - 1);
            assertThat(lines.buffer()).hasSizeLessThan(3 * Lines.LONGEST);
        }
    }

    @Test
    void a_file_that_becomes_shorter_meanwhile_is_no_end_of_lines() throws IOException {
        Files.writeString(file, ("x".repeat(99) + "\n").repeat(10_000));
        try (Lines lines = new Lines(file, 0, Long.MAX_VALUE)) {
            lines.next();
            try (RandomAccessFile cut = new RandomAccessFile(file.toFile(), "rw")) {
                cut.setLength(10);
            }
            assertThatThrownBy(() -> {
                        while (lines.next()) {
                            assertThat(lines.length()).isEqualTo(99);
                        }
                    })
                    .isInstanceOf(EOFException.class);
        }
    }

    @Test
    void a_failure_without_words_is_told_by_its_name() {
        assertThat(EntryFiles.reason(new ClosedChannelException())).isEqualTo("ClosedChannelException");
        assertThat(EntryFiles.reason(new IOException("No space left on device")))
                .isEqualTo("No space left on device");
    }

    @Test
    void lines_in_memory_are_walked_over_like_those_of_a_file() throws IOException {
        List<String> found = new ArrayList<>();
        try (Lines lines = new Lines("one\n\nthree, which is longer\nhalf".getBytes(StandardCharsets.US_ASCII))) {
            while (lines.next()) {
                found.add(new String(lines.copy(), StandardCharsets.US_ASCII));
            }
            assertThat(lines.left()).isEqualTo(4);
        }
        assertThat(found).containsExactly("one", "", "three, which is longer");
    }
}
