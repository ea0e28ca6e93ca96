package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;

/** The run sheet of the demonstration, recorded in a home where its methods are issued. */
class RunSheetTest {
    private static final Path DEMO = Path.of("..", "..", "demo");
    private static final PersonId OFFICE = new PersonId("office-01");

    @TempDir
    private static Path folder;

    private static List<Kept> kept;
    private static List<Kept> again;

    @BeforeAll
    static void record() throws IOException {
        try (House house = new House(folder);
                InputStream sheet = Files.newInputStream(DEMO.resolve("run-sheet.csv"))) {
            Doors doors = house.doors();
            for (Method method : DemoFiles.methods(DemoFiles.plant()).values()) {
                doors.methods().issue(method, OFFICE);
            }
            List<Reading> run = house.sheets().read("run-sheet.csv", sheet).orRefuse();
            kept = doors.readings().record(run, OFFICE);
            again = doors.readings().record(run, OFFICE);
        }
    }

    private static RecordedReading neat(String sample) {
        return kept.stream()
                .map(Kept::reading)
                .filter(each -> each.reading().sample().code().equals(sample))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> rules(String sample) {
        return neat(sample).verdict().findings().stream()
                .map(finding -> finding.rule())
                .filter(rule -> !rule.startsWith("method.") && !rule.endsWith("not-checked"))
                .toList();
    }

    @Test
    void every_sample_has_the_outcome_that_its_pattern_means() {
        Map<String, Outcome> outcomes = new TreeMap<>();
        for (String sample : List.of(
                "L1-01", "L1-02", "L2-01", "L2-02", "L2-03", "L2-04", "L2-05", "L2-06", "L2-07", "L2-08", "L2-09",
                "L2-10", "L2-11", "L2-12", "L3-01", "L3-02", "L3-03")) {
            outcomes.put(sample, neat(sample).verdict().outcome());
        }

        assertThat(outcomes)
                .containsEntry("L2-01", Outcome.NEGATIVE)
                .containsEntry("L2-02", Outcome.POSITIVE)
                .containsEntry("L2-03", Outcome.POSITIVE_ABOVE_RANGE)
                .containsEntry("L2-04", Outcome.NEGATIVE)
                .containsEntry("L2-05", Outcome.POSITIVE)
                .containsEntry("L2-06", Outcome.INVALID)
                .containsEntry("L2-07", Outcome.INVALID)
                .containsEntry("L2-08", Outcome.INVALID)
                .containsEntry("L2-09", Outcome.NEGATIVE)
                .containsEntry("L2-10", Outcome.NEGATIVE)
                .containsEntry("L2-11", Outcome.NEGATIVE)
                .containsEntry("L2-12", Outcome.NEGATIVE)
                .containsEntry("L1-01", Outcome.INVALID)
                .containsEntry("L1-02", Outcome.NEGATIVE)
                .containsEntry("L3-01", Outcome.NEGATIVE)
                .containsEntry("L3-02", Outcome.POSITIVE)
                .containsEntry("L3-03", Outcome.POSITIVE);
    }

    @Test
    void invalid_strips_say_why_and_only_one_shows_a_sign_of_allergen() {
        assertThat(rules("L2-06")).containsExactly("line.control-not-seen");
        assertThat(rules("L2-07")).containsExactly("line.damaged");
        assertThat(rules("L2-08")).containsExactly("time.read-late");
        assertThat(rules("L1-01")).contains("time.shake-short");
        assertThat(Stream.of("L2-06", "L2-07", "L2-08", "L1-01")
                        .filter(sample -> neat(sample).verdict().sign()))
                .containsExactly("L2-06");
    }

    @Test
    void the_bracket_is_ten_and_a_hundred_times_thinner() {
        assertThat(kept.stream()
                        .map(Kept::reading)
                        .filter(each -> each.reading().sample().code().equals("L2-03"))
                        .map(each -> each.reading().sample().dilution().toBigInteger() + " "
                                + each.verdict().outcome().code()))
                .containsExactly("1 positive-above-range", "10 positive", "100 negative");
    }

    @Test
    void the_same_sheet_again_adds_nothing() {
        assertThat(kept).hasSize(19).allMatch(Kept::added);
        assertThat(again).hasSize(19).noneMatch(Kept::added);
    }
}
