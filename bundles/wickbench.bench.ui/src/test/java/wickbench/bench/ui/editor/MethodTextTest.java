package wickbench.bench.ui.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.method.Method;
import wickbench.reading.MethodJson;

/** The fields of the editor hold what a method's file holds, and are judged by the reader of files. */
class MethodTextTest {
    private static final Path METHODS = Path.of("../../demo/methods");

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(METHODS)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    private static Method method(Path file) {
        try {
            return MethodJson.read(file.toString(), Files.readString(file)).orRefuse();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Rinse, swabs, solid and liquid food; two lines, three lines, competitive. */
    @ParameterizedTest
    @MethodSource("files")
    void what_a_file_holds_comes_out_of_the_fields_unchanged(Path file) {
        Method method = method(file);

        MethodLook look = MethodLook.at(MethodText.of(method), method.ref().version());

        assertThat(look.wrong()).isEmpty();
        assertThat(MethodJson.write(look.method().orElseThrow()).canonical())
                .isEqualTo(MethodJson.write(method).canonical());
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_draft_that_was_kept_is_the_same_when_taken_up(Path file) {
        MethodText text = MethodText.of(method(file));

        assertThat(MethodText.of(text.kept())).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            id                      | Milk Rinse | a method id of lower-case letters
            id                      |            | is missing
            title                   |            | is missing; expected a text
            kit                     |            | is missing; expected a text
            target.name             |            | is missing; expected a text
            target.basis            |            | is missing; expected one of marker-protein
            target.factors[0].factor| -2         | above 0
            target.factors[0].to    |            | is missing
            target.factors[0].source|            | is missing
            route                   |            | is missing; expected one of rinse
            amounts.sample.value    | 0          | above 0
            amounts.sample.value    | much       | expected a number, found
            amounts.liquid.value    | -1         | above 0
            storage.low             | 30         | above high
            storage.high            |            | is missing; expected a number
            format                  |            | is missing; expected one of sandwich
            marks.control           |            | say what is printed beside it
            marks.hook              |            | say what is printed beside it
            marks.test              |            | say what is printed beside it
            limit.value             | 0          | above 0
            limit.value             | 1e400      | outside
            limit.unit              |            | is missing; expected a unit
            limit.unit              | µg/swab    | by rinse is given in
            limit.holds             |            | is missing; expected one of in-extract
            limit.probability       | 95         | between 0 and 1
            positive_from           | -1         | above 0
            hook_onset              | 0.0001     | below limit
            timing.develop_s        | 0:00       | above 0
            timing.develop_s        | soon       | expected minutes and seconds such as 7:30
            timing.develop_s        |            | is missing; expected seconds above 0
            timing.window_s         | 0 s        | above 0
            timing.warm_up_s        | 7:75       | expected minutes and seconds
            timing.shake_s          | 9000 h     | expected 0 to 31536000 seconds
            timing.extract_hold_s   | -3 min     | expected minutes and seconds
            steps[0].text           |            | is missing; expected a text
            steps[1].quantity.value | -5         | above 0
            steps[0].lasts_s        | long       | expected minutes and seconds
            """)
    void each_field_left_wrong_gets_one_line(String path, String typed, String said) {
        MethodText text = MethodText.of(method(METHODS.resolve("hazelnut-rinse.json")))
                .with("target.factors[0].to", "whole-food-dried")
                .with("target.factors[0].factor", "2")
                .with("target.factors[0].source", "invented")
                .with("steps[0].lasts_s", "1:00")
                .with("steps[1].quantity.value", "5")
                .with("steps[1].quantity.unit", "mL");

        MethodLook look = MethodLook.at(text.with(path, typed == null ? "" : typed), 1);

        assertThat(look.method()).isEmpty();
        assertThat(look.of(path).orElseThrow()).contains(said).doesNotContain("\n");
        assertThat(Section.of(path).words(path)).isNotEqualTo(path);
    }

    @Test
    void two_checks_of_one_name_are_refused_and_a_unit_is_asked_for() {
        MethodText text = MethodText.of(method(METHODS.resolve("milk-rinse.json")));
        int next = text.rows("pre_checks");
        MethodText more = text.with("pre_checks[" + next + "].name", "pH")
                .with("pre_checks[" + next + "].low", "6")
                .with("pre_checks[" + next + "].high", "5")
                .with("pre_checks[" + (next + 1) + "].name", "pH");

        Map<String, String> wrong = MethodLook.at(more, 2).wrong();

        assertThat(wrong.get("pre_checks[" + next + "].unit")).contains("is missing");
        assertThat(wrong.get("pre_checks[" + (next + 1) + "].name")).contains("two pre-checks are called 'pH'");
    }

    @Test
    void rows_change_places_and_go() {
        MethodText text = MethodText.EMPTY
                .with("steps[0].text", "one")
                .with("steps[1].text", "two")
                .with("steps[1].caution", "mind")
                .with("steps[2].text", "three");

        assertThat(text.swapped("steps", 0, 1).text("steps[0].caution")).isEqualTo("mind");
        assertThat(text.without("steps", 0).texts())
                .containsOnly(
                        Map.entry("steps[0].text", "two"),
                        Map.entry("steps[0].caution", "mind"),
                        Map.entry("steps[1].text", "three"));
        assertThat(text.without("steps", 2).rows("steps")).isEqualTo(2);
    }

    @Test
    void a_strip_without_hook_line_takes_nothing_from_the_fields_of_one() {
        MethodText text =
                MethodText.of(method(METHODS.resolve("hazelnut-rinse.json"))).with("format", "sandwich");

        Method method = MethodLook.at(text, 1).method().orElseThrow();

        assertThat(method.marks()).hasSize(2);
    }

    @Property(tries = 300)
    void whatever_is_typed_there_is_a_method_or_a_reason(@ForAll int field, @ForAll String typed) {
        List<String> paths = Stream.of(Section.values())
                .flatMap(section -> section.asks().stream())
                .map(Ask::path)
                .toList();
        MethodText text = MethodText.of(method(METHODS.resolve("egg-swab-dry.json")))
                .with(paths.get(Math.floorMod(field, paths.size())), typed);

        MethodLook look = MethodLook.at(text, 1);

        assertThat(look.method().isPresent()).isEqualTo(look.wrong().isEmpty());
    }
}
