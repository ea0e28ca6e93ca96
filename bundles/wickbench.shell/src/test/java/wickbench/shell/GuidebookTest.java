package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GuidebookTest {
    @TempDir
    private Path docs;

    private final List<String> opened = new ArrayList<>();

    @Test
    void opens_the_page_and_says_which() throws IOException {
        Path bench = Files.createFile(docs.resolve("bench.html"));

        assertThat(new Guidebook(Optional.of(docs), opened::add).open("bench.html"))
                .contains(bench.toString());
        assertThat(opened).containsExactly(bench.toString());
    }

    @Test
    void says_where_the_page_lies_when_nothing_can_show_it() throws IOException {
        Path bench = Files.createFile(docs.resolve("bench.html"));

        assertThat(new Guidebook(Optional.of(docs), file -> false).open("bench.html"))
                .isEqualTo("No program of this system shows the guide; it lies in " + bench);
    }

    @Test
    void says_that_there_is_none() {
        assertThat(new Guidebook(Optional.empty(), opened::add).open("bench.html"))
                .isEqualTo("The guide is not installed here.");
        assertThat(new Guidebook(Optional.of(docs), opened::add).open("bench.html"))
                .isEqualTo("The guide is not installed here.");
        assertThat(opened).isEmpty();
    }
}
