package wickbench.figures.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.chart.Chart;
import wickbench.api.json.Json;

/** What all sums share; their figures are held by the tests of what they stand on and by the commands. */
class SumsTest {
    static Stream<Sum> sums() {
        return Sums.all().stream();
    }

    /** A sum, and for each of its choices the same sum with that choice. */
    static Stream<Asked> asked() {
        return sums().flatMap(sum -> Stream.concat(
                Stream.of(new Asked(sum, sum.example())),
                sum.inputs().stream()
                        .filter(input -> input.kind() instanceof Input.Kind.Choice)
                        .flatMap(input -> ((Input.Kind.Choice) input.kind())
                                .codes().stream().map(code -> new Asked(sum, with(sum, input.name(), code))))));
    }

    record Asked(Sum sum, Given given) {
        @Override
        public String toString() {
            return sum.id() + " " + given.texts();
        }
    }

    private static Given with(Sum sum, String choice, String code) {
        Map<String, String> texts = new HashMap<>(sum.example().texts());
        texts.put(choice, code);
        Map<String, TableText> tables = new HashMap<>(sum.example().tables());
        if (code.equals("own")) {
            tables.put("own-weights", TableText.of("own", "0,1,3\n1,0,6\n3,6,0"));
        }
        return sum.asked(new Given(texts, tables));
    }

    @Test
    void each_has_a_name_of_its_own() {
        assertThat(sums().map(Sum::id)).doesNotHaveDuplicates().hasSizeGreaterThan(30);
        assertThat(sums().map(Sum::title)).doesNotHaveDuplicates();
        assertThat(new TreeSet<>(sums().map(Sum::topic).toList())).containsExactly(Topic.values());
    }

    @ParameterizedTest
    @MethodSource("asked")
    void each_answers_what_a_page_shows_at_first(Asked asked) {
        Reckoned reckoned = asked.sum().reckon(asked.sum().asked(asked.given()));
        assertThat(reckoned).isInstanceOf(Reckoned.Done.class);
        Answer answer = ((Reckoned.Done) reckoned).answer();
        assertThat(answer.figures().members()).isNotEmpty();
        assertThat(answer.said(Remark.Kind.FORMULA)).isNotEmpty();
        if (!asked.sum().inputs().isEmpty()) {
            assertThat(answer.said(Remark.Kind.RESULT)).isNotEmpty();
        }
        answer.plot()
                .map(Supplier::get)
                .map(Chart::series)
                .ifPresent(series -> assertThat(series).isNotEmpty());
    }

    @ParameterizedTest
    @MethodSource("asked")
    void each_has_words_for_all_it_asks_and_answers(Asked asked) {
        Sum sum = asked.sum();
        assertThat(sum.line()).isNotBlank();
        assertThat(sum.topic().title()).isNotBlank();
        sum.inputs().forEach(input -> {
            assertThat(sum.label(input)).isNotBlank();
            if (input.kind() instanceof Input.Kind.Choice choice) {
                choice.codes()
                        .forEach(code -> assertThat(sum.choice(input, code)).isNotBlank());
            }
        });
        Reckoned.Done done = (Reckoned.Done) sum.reckon(sum.asked(asked.given()));
        members(done.answer().figures())
                .forEach(member -> assertThat(sum.name(member)).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("sums")
    void each_says_which_input_is_missing(Sum sum) {
        Given nothing = new Given(Map.of(), Map.of());
        Given usual = sum.completed(nothing);
        sum.inputs().stream()
                .filter(Input::needed)
                .filter(input -> input.isAsked(usual))
                .findFirst()
                .ifPresent(first -> {
                    Reckoned reckoned = sum.reckon(nothing);
                    assertThat(reckoned).isInstanceOf(Reckoned.Wrong.class);
                    assertThat(((Reckoned.Wrong) reckoned).input()).isEqualTo(first.name());
                });
    }

    @ParameterizedTest
    @MethodSource("sums")
    void each_names_the_field_that_holds_no_number(Sum sum) {
        for (Input input : sum.inputs()) {
            if (isNumber(input.kind())) {
                for (String wrong : new String[] {"many", "NaN", "1e999", "--1"}) {
                    Map<String, String> texts = new HashMap<>(sum.example().texts());
                    texts.put(input.name(), wrong);
                    input.only()
                            .ifPresent(only -> texts.put(
                                    only.input(), only.codes().iterator().next()));
                    Reckoned reckoned =
                            sum.reckon(sum.asked(new Given(texts, sum.example().tables())));
                    assertThat(reckoned).isInstanceOf(Reckoned.Wrong.class);
                    assertThat(((Reckoned.Wrong) reckoned).input()).isEqualTo(input.name());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sums")
    void each_can_be_kept_and_read_again(Sum sum) {
        Reckoned.Done done = (Reckoned.Done) sum.reckon(sum.asked(sum.example()));
        KeptSum kept = KeptSum.of(sum, done, java.util.Optional.of(" why "));
        KeptSum read = KeptSum.read("entry", kept.body()).orRefuse();
        assertThat(read.body()).isEqualTo(kept.body());
        assertThat(read.about()).contains("why");
        Reckoned again = sum.reckon(read.given());
        assertThat(again).isInstanceOf(Reckoned.Done.class);
        assertThat(((Reckoned.Done) again).answer().figures())
                .isEqualTo(done.answer().figures());
    }

    private static boolean isNumber(Input.Kind kind) {
        return kind instanceof Input.Kind.Number
                || kind instanceof Input.Kind.Whole
                || kind instanceof Input.Kind.Decimal
                || kind instanceof Input.Kind.Numbers;
    }

    private static List<String> members(Json value) {
        List<String> names = new ArrayList<>();
        if (value instanceof Json.Obj object) {
            object.members().forEach((name, member) -> {
                names.add(name);
                names.addAll(members(member));
            });
        } else if (value instanceof Json.Arr array) {
            array.items().forEach(item -> names.addAll(members(item)));
        }
        return names;
    }
}
