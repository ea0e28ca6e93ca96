package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;

class DemoFilesTest {
    private final Plant plant = DemoFiles.plant();
    private final Map<MethodId, Method> methods = DemoFiles.methods(plant);

    @Test
    void the_plant_has_three_lines_two_dozen_points_four_kits_and_nine_operators() {
        assertThat(plant.lines()).hasSize(3);
        assertThat(plant.lines().stream()
                        .flatMap(line -> line.points().stream())
                        .map(Plant.Point::name))
                .hasSize(24)
                .doesNotHaveDuplicates();
        assertThat(plant.kits()).hasSize(4);
        assertThat(plant.operators()).hasSize(9).doesNotHaveDuplicates();
    }

    @Test
    void every_method_stands_in_the_file_of_its_name_and_belongs_to_a_kit() {
        assertThat(methods.keySet()).containsExactlyInAnyOrderElementsOf(plant.methods());
        methods.values().forEach(method -> {
            assertThat(method.ref().version()).isEqualTo(1);
            assertThat(plant.kitNamed(method.kit()).allergen())
                    .isEqualTo(method.target().name());
        });
    }

    @Test
    void every_format_and_every_route_is_there() {
        assertThat(methods.values()).extracting(Method::format).contains(Format.values());
        assertThat(methods.values()).extracting(Method::route).contains(Route.values());
    }

    @Test
    void every_method_says_that_it_is_invented() {
        assertThat(methods.values())
                .allSatisfy(
                        method -> assertThat(method.cautions().get(0)).startsWith("Invented for the demonstration"));
    }

    /** Common practice, no source: develop 5 min, window 1 min, warm-up 20 min, shake 60 s, extract used within 3 h. */
    @Test
    void the_hazelnut_methods_keep_the_times_of_common_practice() {
        Method method = methods.get(new MethodId("hazelnut-swab-dry"));

        assertThat(method.timing().develop()).isEqualTo(Duration.ofSeconds(300));
        assertThat(method.timing().window()).isEqualTo(Duration.ofSeconds(60));
        assertThat(method.timing().warmUp()).contains(Duration.ofMinutes(20));
        assertThat(method.timing().shake()).contains(Duration.ofSeconds(60));
        assertThat(method.timing().extractHold()).contains(Duration.ofHours(3));
    }

    @Test
    void the_second_edition_changes_words_and_no_limit() {
        Method first = methods.get(new MethodId("hazelnut-swab-dry"));
        Method second = DemoFiles.secondEdition();

        assertThat(second.ref().id()).isEqualTo(first.ref().id());
        assertThat(second.ref().version()).isEqualTo(2);
        assertThat(second.limit()).isEqualTo(first.limit());
        assertThat(second.timing()).isEqualTo(first.timing());
        assertThat(second.steps()).containsAll(first.steps()).isNotEqualTo(first.steps());
    }

    @Test
    void every_week_holds_known_products_and_every_kit_has_a_hook_only_if_its_strips_do() {
        List<Plant.Product> made = new ArrayList<>();
        plant.lines().forEach(line -> line.week().forEach(id -> made.add(plant.product(id))));

        assertThat(made).containsAll(plant.products());
        assertThat(methods.values())
                .allSatisfy(method -> assertThat(
                                plant.kitNamed(method.kit()).hookLost().isPresent())
                        .isEqualTo(method.format() == Format.SANDWICH_HOOK));
    }
}
