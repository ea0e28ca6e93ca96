package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.Method;
import wickbench.bench.evidence.Reach;
import wickbench.bench.evidence.Reach.Tells;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.KeptSum;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.reading.MethodJson;

/**
 * Whether a method can tell an action level.
 *
 * <p>Action levels: dose ÷ amount, 2 mg and 50 g give 40 mg/kg (FAO/WHO consultation, part 2, computed). Carry-over of 4 mg/kg over
 * 3 m², recovery 0.8: 3200 µg/100 cm² for 300 kg, 106.667 for the first 10 kg (common practice, computed). Limits of the methods are
 * the demonstration's.
 */
class ReachTest {
    private static final Path METHODS = Path.of("../../demo/methods");

    private static Optional<Reach> reach(String method, String sum, String inputs) throws IOException {
        Path file = METHODS.resolve(method + ".json");
        Method of = MethodJson.read(method, Files.readString(file)).orRefuse();
        Sum found = Sums.find(sum).orElseThrow();
        Map<String, String> texts = new java.util.HashMap<>();
        for (String each : inputs.split(" ")) {
            texts.put(each.substring(0, each.indexOf('=')), each.substring(each.indexOf('=') + 1));
        }
        Reckoned.Done done = (Reckoned.Done) found.reckon(new Given(texts, Map.of()));
        return Reach.of(of, KeptSum.of(found, done, Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            egg-swab-dry       | carry-over   | area=3 recovery=.8 batch=300 first-off=10 action-level=4    | CAN_TELL       | 1.75 µg/100 cm², does not lie above the 106.667 µg/100 cm²
            egg-swab-dry       | carry-over   | area=3 recovery=.8 batch=300 first-off=.1 action-level=4    | CANNOT_TELL    | 1.75 µg/100 cm², lies above the 1.06667 µg/100 cm²
            egg-swab-dry       | carry-over   | area=3 recovery=.8 batch=300 action-level=4                 | NOT_COMPARABLE | without the first portion
            egg-swab-dry       | carry-over   | area=3 recovery=.8 batch=300 first-off=10 swab=2            | NOT_COMPARABLE | without an action level
            egg-swab-dry       | action-level | dose=2 amount=50                                            | NOT_COMPARABLE | an action level speaks of food
            gluten-food-liquid | action-level | dose=5 amount=50                                            | NOT_COMPARABLE | no factor to it
            """)
    void a_limit_is_held_against_what_the_level_allows(
            String method, String sum, String inputs, Tells tells, String words) throws IOException {
        Reach reach = reach(method, sum, inputs).orElseThrow();

        assertThat(reach.tells()).isEqualTo(tells);
        assertThat(reach.words()).contains(words);
    }

    @ParameterizedTest
    @CsvSource({"2,50,CAN_TELL", "0.001,50,CANNOT_TELL"})
    void a_food_is_held_against_the_level_itself(String dose, String amount, Tells tells) throws IOException {
        Reach reach = reach("hazelnut-food-solid", "action-level", "dose=" + dose + " amount=" + amount)
                .orElseThrow();

        assertThat(reach.tells()).isEqualTo(tells);
        assertThat(reach.words()).contains("mg/kg");
    }

    @ParameterizedTest
    @CsvSource({"20,CAN_TELL", "0.0001,CANNOT_TELL"})
    void a_rinse_is_held_against_what_stays_in_the_line(String firstOff, Tells tells) throws IOException {
        Reach reach = reach(
                        "hazelnut-rinse",
                        "carry-over",
                        "hold-up=3 batch=500 first-off=" + firstOff + " action-level=40")
                .orElseThrow();

        assertThat(reach.tells()).isEqualTo(tells);
    }

    @ParameterizedTest
    @CsvSource({"protein=40 protein-percent=25.8"})
    void other_sums_say_nothing_of_it(String inputs) throws IOException {
        assertThat(reach("egg-swab-dry", "protein", inputs)).isEmpty();
    }
}
