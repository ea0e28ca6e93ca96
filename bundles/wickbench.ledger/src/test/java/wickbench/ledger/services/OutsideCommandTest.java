package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.journal.Entry;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;
import wickbench.ledger.acts.Outside;
import wickbench.testing.HeardTerminal;

/** What an outside laboratory reported is typed as a command, and linked to the hold because of which it was asked. */
class OutsideCommandTest {
    private Quality quality;
    private Entry positive;

    @BeforeEach
    void open() throws IOException {
        quality = Quality.tested();
        positive = quality.positive("S-3", Quality.HOPPER, Strips.START.plusSeconds(7200));
    }

    @AfterEach
    void close() {
        quality.close();
    }

    @Test
    void a_report_with_its_amount_is_linked_to_the_hold() {
        assertThat(told("--says", "detected", "--amount", "2.5", "--unit", "mg/kg", "--basis", "total-protein"))
                .singleElement()
                .asString()
                .doesNotStartWith("--");
        Outside outside =
                quality.deciding.of(positive.id()).orElseThrow().outside().get(0);
        assertThat(outside.amount()).contains(Quantity.of("2.5", Unit.MG_PER_KG));
        assertThat(outside.batch()).contains(Quality.BATCH);
        assertThat(quality.reasons()).contains("release.outside-detected");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        --says detected --amount 2.5 | --amount:
        --says detected --amount 2.5 --unit mg/kg | --amount:
        --says detected --amount 2.5 --unit spoons --basis total-protein | --unit:
        --says detected --amount 2.5 --unit mg/kg --basis guesswork | --basis:
        --says detected --amount 0 --unit mg/kg --basis total-protein | --amount:
        --says perhaps | --says:
        """)
    void what_is_not_understood_is_one_line_and_records_nothing(String options, String begins) {
        long before = quality.entries();
        assertThat(told(options.split(" "))).singleElement().asString().startsWith(begins);
        assertThat(quality.entries()).isEqualTo(before);
    }

    @Test
    void reports_are_listed_with_the_hold_because_of_which_they_were_asked_and_found_by_conditions() {
        told("--says", "detected", "--amount", "2.5", "--unit", "mg/kg", "--basis", "total-protein");
        assertThat(listed())
                .anyMatch(line -> line.contains("Harbour Laboratory")
                        && line.contains("HL-17")
                        && line.contains("detected, 2.5 mg/kg (total protein)")
                        && line.contains("S-3 (held)"));
        for (List<String> some : List.of(
                List.of("--laboratory", "harbour"),
                List.of("--target", "nut"),
                List.of("--batch", Quality.BATCH),
                List.of("--says", "detected"),
                List.of("--from", "2026-03-05", "--to", "2026-03-05"),
                List.of("--because-of", positive.id().toString()))) {
            assertThat(listed(some.toArray(String[]::new))).as("%s", some).anyMatch(line -> line.contains("HL-17"));
        }
        for (List<String> none : List.of(
                List.of("--laboratory", "inland"),
                List.of("--target", "milk"),
                List.of("--batch", "B-8"),
                List.of("--says", "not-detected"),
                List.of("--from", "2026-03-07"),
                List.of("--to", "2026-03-04"))) {
            assertThat(listed(none.toArray(String[]::new)))
                    .as("%s", none)
                    .containsExactly("No report of an outside laboratory answers this.");
        }
    }

    private List<String> listed(String... options) {
        HeardTerminal terminal = HeardTerminal.of(Quality.TESTER, false);
        List<String> line = new ArrayList<>(List.of("outside-reports"));
        line.addAll(List.of(options));
        assertThat(new CommandLine(quality.command(terminal)).execute(line.toArray(String[]::new)))
                .isZero();
        return terminal.lines();
    }

    private List<String> told(String... options) {
        HeardTerminal terminal = HeardTerminal.of(Quality.TESTER, false);
        Object command = quality.command(terminal);
        List<String> line = new ArrayList<>(List.of(
                "outside",
                "--laboratory",
                "Harbour Laboratory",
                "--reference",
                "HL-17",
                "--sample",
                "F-1",
                "--target",
                "hazelnut",
                "--of-batch",
                Quality.BATCH,
                "--because-of",
                positive.id().toString(),
                "--reported",
                "2026-03-05T10:00:00Z"));
        line.addAll(List.of(options));
        List<String> wrong = new ArrayList<>();
        new CommandLine(command)
                .setExecutionExceptionHandler((e, called, result) -> {
                    assertThat(e).isInstanceOf(BadInput.class);
                    wrong.add(e.getMessage());
                    return 2;
                })
                .execute(line.toArray(String[]::new));
        return wrong.isEmpty() ? terminal.notes() : wrong;
    }
}
