package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Founding;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.testing.HeardTerminal;

class DemoCommandTest {
    @TempDir
    private Path folder;

    private final HeardTerminal paper = HeardTerminal.ofNobody(true);

    private int call(House house, String... arguments) {
        CommandLine command = new CommandLine(new DemoCommand(house.doors(), paper));
        command.setExecutionExceptionHandler((failure, line, parsed) -> {
            throw failure;
        });
        command.parseArgs(arguments);
        return command.execute(arguments);
    }

    @Test
    void a_founded_home_is_refused_and_stays_as_it_is() {
        try (House house = new House(folder)) {
            house.journal().found(Founding.defaults(ZoneId.of("Europe/Vienna")));

            assertThatThrownBy(() -> new DemoCommand(house.doors(), paper).call())
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("home.founded"))
                    .hasMessageContaining(folder.toString());
            assertThat(house.entries()).hasSize(1);
        }
    }

    @Test
    void a_day_still_to_come_is_refused_and_nothing_is_founded() {
        try (House house = new House(folder)) {
            DemoCommand command = new DemoCommand(house.doors(), paper);
            new CommandLine(command).parseArgs("--until", "2999-01-01");

            assertThatThrownBy(command::call).isInstanceOf(BadInput.class).hasMessageContaining("2999-01-01");
            assertThat(house.journal().founding()).isEmpty();
        }
    }

    @Test
    void more_than_twelve_months_or_none_are_refused_and_nothing_is_founded() {
        try (House house = new House(folder)) {
            for (String months : java.util.List.of("0", "13")) {
                DemoCommand command = new DemoCommand(house.doors(), paper);
                new CommandLine(command).parseArgs("--months", months);

                assertThatThrownBy(command::call)
                        .isInstanceOf(BadInput.class)
                        .hasMessage("--months: expected a number of months from 1 to 12, found " + months);
            }
            assertThat(house.journal().founding()).isEmpty();
        }
    }

    @Test
    void twelve_months_are_recorded_and_told_for_machines() {
        try (House house = new House(folder)) {
            assertThat(call(house, "--until", "2026-03-01", "--seed", "5")).isZero();

            assertThat(house.journal().founding().orElseThrow().simulatedSeed()).hasValue(5);
            assertThat(paper.printed()).hasSize(1);
            Json.Obj told = JsonReader.readObject("out", paper.printed().get(0)).orRefuse();
            assertThat(told.get("from")).contains(new Json.Text("2025-03-01"));
            assertThat(told.get("until")).contains(new Json.Text("2026-03-01"));
            assertThat(share(told, "positive_before", "strips_before")).isGreaterThan(0.4);
            assertThat(share(told, "positive_after", "strips_after")).isLessThan(0.1);
            assertThat(share(told, "no_control_line_in_lot", "strips_in_lot"))
                    .isGreaterThan(5 * share(told, "no_control_line_in_others", "strips_in_others"));
            assertThat(share(told, "low_positive_missed_before", "low_positive_before"))
                    .isGreaterThan(0.1);
            assertThat(share(told, "low_positive_missed_after", "low_positive_after"))
                    .isLessThan(0.1);
        }
    }

    /** Returns the share that two numbers of the story make. */
    private static double share(Json.Obj told, String of, String all) {
        return number(told, of) / number(told, all);
    }

    private static double number(Json.Obj told, String name) {
        return told.get("story").map(Json.Arr.class::cast).orElseThrow().items().stream()
                .flatMap(chapter -> ((Json.Obj) chapter).get(name).stream())
                .mapToDouble(value -> ((Json.Num) value).value().doubleValue())
                .sum();
    }
}
