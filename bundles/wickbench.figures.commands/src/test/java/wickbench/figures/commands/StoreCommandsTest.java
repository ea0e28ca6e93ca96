package wickbench.figures.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StoreCommandsTest {
    @TempDir
    Path folder;

    /** Formula of USP <1079.2>, computed with R 4.2.2. */
    @Test
    void warmth_of_hours() throws IOException {
        Call call = Call.of("warmth", file("hours,celsius 22,4 2,25"), "--high", "8", "--low", "2");
        assertThat(call.number("kinetic")).isEqualTo(9.3271, within(0.00005));
        assertThat(call.number("hours")).isEqualTo(24);
        assertThat(call.number("hoursAbove")).isEqualTo(2);
        assertThat(call.number("hoursBelow")).isZero();
        assertThat(Call.of("warmth", file("22,4 2,25"), "--heat", "65").number("kinetic"))
                .isEqualTo(8.2048, within(0.00005));
    }

    /** The same source; equal intervals weigh equally: 5, 5, 5, 15 °C give 8.7859 (R 4.2.2). */
    @Test
    void warmth_of_times() throws IOException {
        String[] readings = {
            "timestamp,celsius 2026-03-01T08:00Z,5 2026-03-01T09:00Z,5 2026-03-01T11:00+01:00,5 2026-03-01T11:00Z,15",
            "2026-03-01T08:00,5 2026-03-01T09:00,5 2026-03-01T10:00,5 2026-03-01T11:00,15",
            "time;celsius 2026-03-01T08:00:00;5,0 2026-03-01T09:00:00;5,0 2026-03-01T10:00:00;5 2026-03-01T11:00:00;15"
        };
        for (String table : readings) {
            Call call = Call.of("warmth", file(table));
            assertThat(call.complaint()).isEmpty();
            assertThat(call.number("kinetic")).isEqualTo(8.7859, within(0.00005));
        }
    }

    /** By hand: of eleven hours between the second reading and the third one usual hour is covered. */
    @Test
    void gaps_are_told() throws IOException {
        String table = "2026-03-01T08:00Z,5 2026-03-01T09:00Z,5 2026-03-01T20:00Z,5 2026-03-01T21:00Z,5";
        Call call = Call.of("warmth", file(table));
        assertThat(call.number("gaps")).isEqualTo(1);
        assertThat(call.number("uncoveredHours")).isEqualTo(10);
        assertThat(Call.of("warmth", file(table), "--gap", "12").number("gaps")).isZero();
        assertThat(Call.forPeople("warmth", file(table)).lines())
                .contains("1 gaps: those hours are not covered and count for nothing.")
                .anyMatch(line -> line.startsWith("A screening number"));
    }

    /** Waters, Inventory Control, 1128.971 exact; Poisson and least cost, computed with R 4.2.2. */
    @Test
    void reorder() {
        assertThat(Call.of("reorder", "--demand", "100", "--lead", "8", "--lead-sd", "2", "--service", ".95")
                        .number("reorderPoint"))
                .isEqualTo(1128.971, within(0.0005));
        Call rare = Call.of("reorder", "--demand", "2.5", "--lead", "3", "--poisson", "--service", ".98");
        assertThat(rare.number("reorderPoint")).isEqualTo(14);
        Call least = Call.of("reorder", "--demand", "1200", "--lead", "1", "--order-cost", "50", "--holding-cost", "6");
        assertThat(least.number("orderQuantity")).isEqualTo(141.4214, within(0.00005));
    }

    /** Croston (1972), computed with R 4.2.2, forecast 8.20. */
    @Test
    void demand() throws IOException {
        String table = "0 0 5 0 0 0 3 0 6 0 0 4";
        Call tenth = Call.of("demand", file(table));
        assertThat(tenth.number("plain")).isEqualTo(1.614175861, within(5e-10));
        assertThat(tenth.number("sba")).isEqualTo(1.533467068, within(5e-10));
        Call fifth = Call.of("demand", file("demand " + table), "--alpha", ".2");
        assertThat(fifth.number("plain")).isEqualTo(1.58490566, within(5e-9));
        assertThat(fifth.number("sba")).isEqualTo(1.426415094, within(5e-10));
        assertThat(fifth.number("sbj")).isEqualTo(1.408805031, within(5e-10));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "warmth | '' | holds no numbers",
                "warmth | 1,5 0,5 | :2: hours",
                "warmth | 1,278 | :1: celsius",
                "warmth | 1,x | :1:",
                "warmth | 1,NaN | :1:",
                "warmth | 1,5,6 | :1:",
                "warmth | 1,5 2 | :2:",
                "warmth | 2026-03-01T08:00Z,5 | at least two",
                "warmth | 2026-03-01T08:00Z,5 2026-03-01T08:00Z,5 | :2: timestamp",
                "warmth | 2026-03-01T08:00Z,5 2026-03-01T09:00,5 | :2:",
                "warmth | 2026-03-01T08:00,5 2026-03-01T25:00,5 | :2:",
                "warmth | 2026-03-01T08:00,5 2026-03-01T09:00 | :2:",
                "warmth | 2026-03-01T08:00Z,5 2026-03-01T09:00Z,300 | :2: celsius",
                "warmth --heat 0 | 1,5 | heat",
                "warmth --gap 0 | 2026-03-01T08:00Z,5 2026-03-01T09:00Z,5 | gap",
                "demand | 0 0 | no rate",
                "demand | 1 -1 | :2: demand",
                "demand --alpha 0 | 1 | alpha"
            })
    void bad_tables_are_one_line(String command, String table, String complaint) throws IOException {
        String[] words = command.split(" ");
        String[] arguments = java.util.Arrays.copyOf(words, words.length + 1);
        arguments[words.length] = file(table);
        Call call = Call.of(arguments);
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint().lines()).hasSize(1);
        assertThat(call.complaint()).contains(complaint.strip());
        assertThat(call.json()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reorder --demand -1 --lead 1",
                "reorder --demand NaN --lead 1",
                "reorder --demand 1 --lead x",
                "reorder --demand 1 --lead 1 --service 1",
                "reorder --demand 1 --lead 1 --service 0",
                "reorder --demand 1 --lead 1 --poisson --lead-sd 1",
                "reorder --demand 1 --lead 1 --order-cost 5",
                "reorder --demand 1 --lead 1 --holding-cost 5",
                "warmth no-such-file.csv"
            })
    void bad_options_are_one_line(String arguments) {
        Call call = Call.of(arguments.split(" "));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint().lines()).hasSize(1);
        assertThat(call.json()).isEmpty();
    }

    private String file(String table) throws IOException {
        return Files.writeString(folder.resolve("store.csv"), table.replace(' ', '\n'))
                .toString();
    }
}
