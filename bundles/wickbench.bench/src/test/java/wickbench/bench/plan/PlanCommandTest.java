package wickbench.bench.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

/** {@code plan}, called as the command line calls it. */
class PlanCommandTest {
    private final HeardTerminal person = HeardTerminal.ofNobody(false);
    private final HeardTerminal machine = HeardTerminal.ofNobody(true);
    private String complaint = "";

    @Test
    void machines_get_totals_and_times_as_the_schema_says() throws IOException {
        assertThat(run(machine, "30", "15", "2x300+60,1x600+60")).isZero();

        String json = machine.values().get(0).canonical();
        assertThat(Schemas.published().errors("plan.schema.json", json)).isEmpty();
        assertThat(json).contains("\"total_s\":645", "\"optimal\":true", "\"bound_s\":645");
        assertThat(json).contains("{\"develop_s\":600,\"dip_start_s\":0,\"read_start_s\":630,\"strip\":\"3\"}");
    }

    @Test
    void people_get_a_table_and_bars() {
        assertThat(run(person, "30", "15", "1x300+60")).isZero();

        assertThat(person.lines()).contains("1 | 0:00 | 0:30 | 5:30 | 5:30 | 6:30");
        assertThat(person.lines()).anyMatch(line -> line.startsWith("1 |######---") && line.endsWith("RRR|"));
        assertThat(person.lines()).contains("5:45 in all; no plan is shorter.");
    }

    @Test
    void more_strips_than_can_be_proven_state_their_gap() {
        assertThat(run(person, "30", "15", "200x300+60")).isZero();

        assertThat(person.lines())
                .anyMatch(line -> line.startsWith("153:00 in all; none is shorter than 152:30, so at most 0:30"));
    }

    @ParameterizedTest
    @CsvSource({
        "30, 15, 8x0+60, above 0 s",
        "30, 15, 8x300+10, shorter than the look",
        "30, 15, 0x300+60, expected 1 to 1000 strips",
        "30, 15, 1001x300+60, expected 1 to 1000 strips",
        "30, 15, 8y300, expected a list such as",
        "30, 15, '8x300+60,', expected a list such as",
        "-3, 15, 8x300+60, expected seconds",
        "30, soon, 8x300+60, expected seconds",
        "0, 15, 8x300+60, above 0 s"
    })
    void bad_input_is_one_line(String hands, String look, String strips, String says) {
        assertThat(run(person, hands, look, strips)).isEqualTo(2);

        assertThat(complaint).contains(says).hasLineCount(1);
        assertThat(person.lines()).isEmpty();
    }

    @Test
    void a_rule_that_is_none_is_named() {
        assertThat(run(person, "30", "15", "8x300+60", "--window", "soon")).isEqualTo(2);
        assertThat(complaint).contains("expected one of end, start, exact");
    }

    private int run(HeardTerminal terminal, String hands, String look, String strips, String... more) {
        String[] arguments = new String[3 + more.length];
        arguments[0] = "--hands-on=" + hands;
        arguments[1] = "--look=" + look;
        arguments[2] = "--strips=" + strips;
        System.arraycopy(more, 0, arguments, 3, more.length);
        return new CommandLine(new PlanCommand().commands(terminal))
                .setExecutionExceptionHandler((e, line, result) -> {
                    complaint = e.getMessage();
                    return 2;
                })
                .execute(arguments);
    }
}
