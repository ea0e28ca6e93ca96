package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;
import wickbench.testing.Schemas;

/** What the plant book of the demonstration records, held against the published forms and the rest of the demonstration. */
class PlantWeeksTest {
    private static final Set<String> KINDS = Set.of(
            "line.stated",
            "point.stated",
            "product.stated",
            "cleaning.stated",
            "rule.stated",
            "floor.pictured",
            "point.placed",
            "changeover.made",
            "maintenance.done",
            "validation.opened",
            "validation.ran",
            "validation.confirmed");

    @TempDir
    private static Path folder;

    private static List<Entry> entries;

    @BeforeAll
    static void sixteen_weeks() {
        try (House house = new House(folder)) {
            new Generator(house.doors()).make(1, LocalDate.of(2026, 2, 2), LocalDate.of(2026, 5, 25), Progress.NONE);
            entries = house.entries().stream()
                    .filter(entry -> KINDS.contains(entry.kind()))
                    .toList();
        }
    }

    @Test
    void every_entry_is_as_its_schema_says_and_everything_of_the_chapter_happens() throws Exception {
        Schemas schemas = Schemas.published();
        assertThat(entries)
                .allSatisfy(entry -> assertThat(schemas.errors(
                                entry.kind() + "-1.schema.json", entry.body().canonical()))
                        .as(entry.kind())
                        .isEmpty());
        assertThat(entries.stream().map(Entry::kind).collect(Collectors.toSet()))
                .isEqualTo(KINDS);
        assertThat(of("validation.confirmed")).hasSize(3);
    }

    @Test
    void products_and_points_are_those_of_the_rest_of_the_demonstration() {
        Plant plant = DemoFiles.plant();
        plant.products()
                .forEach(product -> assertThat(of("product.stated"))
                        .filteredOn(body -> text(body, "product").equals(product.id()))
                        .singleElement()
                        .satisfies(body -> assertThat(allergens(body)).isEqualTo(new TreeSet<>(product.allergens()))));
        Set<String> points =
                of("point.stated").stream().map(body -> text(body, "point")).collect(Collectors.toSet());
        plant.lines()
                .forEach(line ->
                        line.points().forEach(point -> assertThat(points).contains(point.name())));
        assertThat(of("point.placed").stream().map(body -> text(body, "point")))
                .containsExactlyInAnyOrderElementsOf(points);
    }

    private static Set<String> allergens(Json.Obj product) {
        return PlantSite.objects(product.get("allergens").orElseThrow()).stream()
                .map(held -> text(held, "allergen"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Json.Obj> of(String kind) {
        return entries.stream()
                .filter(entry -> entry.kind().equals(kind))
                .map(Entry::body)
                .toList();
    }

    private static String text(Json.Obj object, String name) {
        return ((Json.Text) object.get(name).orElseThrow()).value();
    }
}
