package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wickbench.api.person.PersonId;

class CrewTest {
    private final Plant plant = DemoFiles.plant();

    @Property
    void nobody_stands_at_two_places_of_a_day(@ForAll @IntRange(min = 0, max = 1500) int days) {
        LocalDate day = LocalDate.of(2024, 1, 1).plusDays(days);
        List<PersonId> there = new ArrayList<>();
        for (int shift = 0; shift < plant.shifts().size(); shift++) {
            for (int line = 0; line < plant.lines().size(); line++) {
                Crew crew = Crew.of(plant, line, day, shift);
                there.add(crew.operator());
                assertThat(crew.second()).isNotEqualTo(crew.operator());
            }
        }

        assertThat(there).doesNotHaveDuplicates();
    }

    @Example
    void everyone_comes_to_every_line_within_nine_weeks() {
        for (int line = 0; line < plant.lines().size(); line++) {
            List<PersonId> there = new ArrayList<>();
            for (int week = 0; week < 9; week++) {
                there.add(Crew.of(plant, line, LocalDate.of(2026, 1, 5).plusWeeks(week), 0)
                        .operator());
            }
            assertThat(there).containsExactlyInAnyOrderElementsOf(plant.operators());
        }
    }
}
