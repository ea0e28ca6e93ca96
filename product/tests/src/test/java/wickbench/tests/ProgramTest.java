package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program from outside: exit codes, one line when it cannot start, nothing left behind. */
class ProgramTest {

    private static final int CANNOT_START = 2;

    @TempDir
    Path temporary;

    @Test
    void an_unknown_feature_is_one_clear_line() throws Exception {
        Answer answer = new Program(temporary).call("--features", "nowhere", "--help");
        assertThat(answer.code()).isEqualTo(CANNOT_START);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).singleElement().asString().contains("no feature \"nowhere\"");
    }

    @Test
    void bad_usage_is_told_without_a_trace() throws Exception {
        Answer answer = new Program(temporary).call("no-such-command");
        assertThat(answer.code()).isEqualTo(CANNOT_START);
        assertThat(answer.err()).contains("no-such-command").doesNotContain("\tat ");
    }

    @Test
    void help_leaves_neither_a_home_nor_a_cache_behind() throws Exception {
        assertThat(new Program(temporary).call("--help").code()).isZero();
        assertThat(temporary.resolve("data")).doesNotExist();
        try (var left = Files.list(temporary.resolve("caches/wickbench"))) {
            assertThat(left.filter(Files::isDirectory)).isEmpty();
        }
    }
}
