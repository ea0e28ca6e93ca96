package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;

class ExitCodeTest {
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);

    @Test
    void is_2_for_bad_input_with_one_line_a_complaint() {
        BadInput failure = new BadInput(Complaint.at("sheet.csv", 4, "read", "lies before the start"));

        assertThat(ExitCode.of(failure, err, false)).isEqualTo(2);
        assertThat(said.toString(StandardCharsets.UTF_8)).isEqualTo("sheet.csv:4: read: lies before the start\n");
    }

    @Test
    void shows_the_first_complaints_of_many_and_counts_the_others() {
        ExitCode.of(
                new BadInput(IntStream.range(0, 130)
                        .mapToObj(line -> Complaint.at("sheet.csv", line, "read", "is no time"))
                        .toList()),
                err,
                false);

        assertThat(said.toString(StandardCharsets.UTF_8).lines())
                .hasSize(21)
                .startsWith("sheet.csv:0: read: is no time")
                .endsWith("and 110 more like these");
    }

    @Test
    void is_3_for_what_a_rule_refuses() {
        assertThat(ExitCode.of(new Refusal("home.held", "held by process 7"), err, false))
                .isEqualTo(3);
        assertThat(said.toString(StandardCharsets.UTF_8)).isEqualTo("held by process 7\n");
    }

    @Test
    void shows_a_trace_only_when_asked() {
        assertThat(ExitCode.of(new IllegalStateException("loose wheel"), err, false))
                .isEqualTo(70);
        assertThat(said.toString(StandardCharsets.UTF_8))
                .contains("loose wheel")
                .doesNotContain("\tat ");

        ExitCode.of(new IllegalStateException("loose wheel"), err, true);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("\tat ");
    }
}
