package wickbench.plant.changeover;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.MethodId;
import wickbench.plant.Stated;
import wickbench.plant.book.PlantHome;
import wickbench.plant.clean.Clean;
import wickbench.plant.clean.Validation;
import wickbench.plant.clean.Validity;
import wickbench.plant.product.Product;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.site.Surface;

class ChangingTest {
    private final Stated mill = PlantHome.mill();

    @Test
    void what_leaves_is_what_the_next_does_not_hold_and_the_other_way_is_another_matter() {
        Changing line = validated();
        Changeover down = line.of(product("nut-milk"), product("milk"));
        assertThat(down.allergens()).containsExactly("hazelnut");
        assertThat(down.tests())
                .extracting(test -> test.place() + "=" + test.method().id())
                .containsExactly(
                        "L2 kettle rim=hazelnut-swab-dry",
                        "L2 pump seal=hazelnut-swab-dry",
                        "L2 last rinse=hazelnut-rinse",
                        "L2 first off=hazelnut-food-solid");
        assertThat(down.allowed()).isTrue();
        Changeover up = line.of(product("milk"), product("nut-milk"));
        assertThat(up.tested()).isFalse();
        assertThat(up.tests()).isEmpty();
        assertThat(up.clean()).isEmpty();
        assertThat(up.cost()).contains(new BigDecimal(10));
    }

    @Test
    void a_strip_that_does_not_see_whey_covers_no_whey() {
        Changeover change = validated().of(product("whey"), product("plain"));
        assertThat(change.faults()).containsExactly(Fault.UNCOVERED);
        assertThat(change.uncovered()).singleElement().satisfies(leaving -> {
            assertThat(leaving.ways()).isNotEmpty().noneMatch(Way::sees);
            assertThat(leaving.ways().get(0).notSeen()).contains("whey proteins");
        });
        assertThat(change.cost()).isEmpty();
        assertThat(validated().of(product("milk"), product("plain")).faults()).isEmpty();
    }

    @Test
    void an_allergen_without_any_method_is_uncovered() {
        assertThat(validated().of(product("fish"), product("plain")).faults()).containsExactly(Fault.UNCOVERED);
    }

    @Test
    void not_stated_is_not_none() {
        assertThat(validated().of(product("unknown"), product("plain")).faults())
                .containsExactly(Fault.NOT_STATED);
        assertThat(validated().of(product("plain"), product("unknown")).faults())
                .containsExactly(Fault.NOT_STATED);
        assertThat(validated().of(product("plain"), product("milk")).faults()).isEmpty();
    }

    @Test
    void a_clean_that_was_not_shown_to_work_forbids_the_change_and_the_shorter_that_was_is_taken() {
        Changeover none = line(List.of()).of(product("milk"), product("plain"));
        assertThat(none.faults()).containsExactly(Fault.NO_CLEAN);
        Changeover never = line(cleans(Validity.NEVER)).of(product("milk"), product("plain"));
        assertThat(never.faults()).containsExactly(Fault.NOT_VALIDATED);
        assertThat(validated().of(product("milk"), product("plain")).clean())
                .hasValueSatisfying(clean -> assertThat(clean.clean().id()).isEqualTo("CP-2n"));
        assertThat(validated().of(product("nut-milk"), product("plain")).clean())
                .hasValueSatisfying(clean -> assertThat(clean.clean().id()).isEqualTo("CP-2"));
    }

    @Test
    void a_method_without_a_point_is_no_test() {
        Changing bare = new Changing(
                line("L2"),
                List.of(),
                cleans(Validity.VALIDATED),
                PlantHome.demoMethods(),
                new TestTime(),
                Disputes.NONE);
        assertThat(bare.of(product("milk"), product("plain")).faults()).containsExactly(Fault.NO_POINT);
    }

    @Test
    void food_that_answers_the_strip_itself_is_not_tested_by_it() {
        Point first = new Point(
                "first",
                "L2",
                Optional.empty(),
                Surface.PRODUCT,
                Optional.empty(),
                List.of(new MethodId("gluten-food-liquid")),
                false);
        Product wheat = holding("wheat-drink", "wheat");
        Changing line = new Changing(
                line("L2"),
                List.of(first),
                cleans(Validity.VALIDATED),
                PlantHome.demoMethods(),
                new TestTime(),
                Disputes.NONE);
        assertThat(line.of(wheat, product("plain")).tests()).hasSize(1);
        assertThat(line.of(wheat, holding("barley-drink", "barley")).faults()).containsExactly(Fault.NO_POINT);
    }

    @Test
    void the_time_is_that_of_the_clean_and_of_one_person_at_the_strips() {
        Changeover change = validated().of(product("nut-milk"), product("milk"));
        // four strips of one kit: 60 s shaken, 45 s each before the start, 300 s developed, 20 s to read each, and no
        // plan is shorter
        assertThat(change.testMinutes()).isBetween(9, 10);
        assertThat(change.minutes()).isEqualTo(40 + change.testMinutes());
    }

    /** Rows of the table of n for a finite lot: hypergeometric, computed with R and by hand. */
    @ParameterizedTest
    @CsvSource({"20, 0.05", "50, 0.05", "100, 0.05", "100, 0.10"})
    void points_drawn_at_random_are_as_many_as_the_table_says(int pool, BigDecimal share) throws IOException {
        Line line = new Line("L9", "Pool", List.of(), 0, Optional.of(new Line.Random(share, new BigDecimal("0.95"))));
        List<Point> points = new ArrayList<>(IntStream.range(0, pool)
                .mapToObj(i -> new Point(
                        "P" + i,
                        "L9",
                        Optional.empty(),
                        Surface.STAINLESS_STEEL,
                        Optional.empty(),
                        List.of(new MethodId("milk-swab-wet")),
                        true))
                .toList());
        Changing changing = new Changing(
                line, points, cleans(Validity.VALIDATED), PlantHome.demoMethods(), new TestTime(), Disputes.NONE);
        assertThat(changing.of(product("milk"), product("plain")).draw()).isEqualTo(published(pool, share));
    }

    private static int published(int pool, BigDecimal share) throws IOException {
        Map<String, Integer> rows = new HashMap<>();
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/wickbench/plant/hyper_zero_n_95.csv"));
        String[] header = lines.get(0).replace("\"", "").split(",");
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            for (int i = 1; i < cells.length; i++) {
                rows.put(cells[0] + "@" + header[i], Integer.valueOf(cells[i]));
            }
        }
        return rows.entrySet().stream()
                .filter(row -> row.getKey().startsWith(pool + "@"))
                .filter(row -> new BigDecimal(row.getKey().replaceAll(".*@[^0-9.]*", "")).compareTo(share) == 0)
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    private Changing validated() {
        return line(cleans(Validity.VALIDATED));
    }

    private Changing line(List<Validation> cleans) {
        return new Changing(
                line("L2"),
                mill.points().stream()
                        .filter(point -> point.line().equals("L2"))
                        .toList(),
                cleans,
                PlantHome.demoMethods(),
                new TestTime(),
                Disputes.NONE);
    }

    private List<Validation> cleans(Validity state) {
        return mill.cleans().stream().map(clean -> cleanAs(clean, state)).toList();
    }

    private static Validation cleanAs(Clean clean, Validity state) {
        Set<String> shown = clean.removes().isEmpty() ? Set.of("milk", "hazelnut", "fish", "wheat") : clean.removes();
        return new Validation(clean, state, 0, Optional.empty(), Optional.empty(), shown, List.of(), Optional.empty());
    }

    private Line line(String id) {
        return mill.lines().stream()
                .filter(line -> line.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Product product(String id) {
        return mill.products().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Product holding(String id, String allergen) {
        return new Product(
                id,
                id,
                Set.of("L2"),
                Optional.of(List.of(new wickbench.plant.product.Contained(
                        allergen, wickbench.plant.product.Form.LIQUID, Optional.empty(), Optional.empty()))),
                wickbench.plant.product.Soil.LIGHT);
    }
}
