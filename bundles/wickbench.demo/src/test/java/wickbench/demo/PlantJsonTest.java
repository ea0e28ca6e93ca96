package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

class PlantJsonTest {
    private static final Plant.Closed NEW_YEAR = new Plant.Closed(MonthDay.of(12, 24), MonthDay.of(1, 1));

    @Test
    void a_closed_time_may_run_over_new_year() {
        assertThat(NEW_YEAR.covers(LocalDate.of(2025, 12, 23))).isFalse();
        assertThat(NEW_YEAR.covers(LocalDate.of(2025, 12, 24))).isTrue();
        assertThat(NEW_YEAR.covers(LocalDate.of(2026, 1, 1))).isTrue();
        assertThat(NEW_YEAR.covers(LocalDate.of(2026, 1, 2))).isFalse();
    }

    @Test
    void nothing_runs_at_weekends_and_in_closed_times() {
        Plant plant = DemoFiles.plant();

        assertThat(plant.works(LocalDate.of(2026, 3, 6))).isTrue();
        assertThat(plant.works(LocalDate.of(2026, 3, 7))).isFalse();
        assertThat(plant.works(LocalDate.of(2026, 8, 12))).isFalse();
    }

    @Test
    void a_week_is_made_shift_by_shift() {
        Plant plant = DemoFiles.plant();
        Plant.Line line = plant.lines().get(1);

        assertThat(plant.made(line, LocalDate.of(2026, 3, 2), 0).id()).isEqualTo("sunflower-cream");
        assertThat(plant.made(line, LocalDate.of(2026, 3, 2), 1).id()).isEqualTo("milk-cream");
        assertThat(plant.made(line, LocalDate.of(2026, 3, 6), 1).id()).isEqualTo("sunflower-cream");
    }

    @Test
    void a_file_with_a_field_that_means_nothing_is_refused() {
        var read = PlantJson.read("x.json", """
                {"about": "x", "name": "x", "zone": "Europe/Vienna", "station": "x", "colour": "red"}
                """);

        assertThat(read.complaints()).hasSize(1);
        assertThat(read.complaints().get(0).oneLine()).startsWith("x.json: colour: ");
    }
}
