package wickbench.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StepWedgeTest {
    private static final StepWedge WEDGE = StepWedge.of(7);

    @Test
    void steps_grow_lighter_and_spots_are_darker_by_at_least_a_code() {
        assertThat(WEDGE.rows()).extracting(StepWedge.Row::end).containsExactly(StepWedge.End.values());
        WEDGE.rows().forEach(row -> {
            assertThat(row.steps()).hasSize(StepWedge.STEPS);
            for (int i = 1; i < row.steps().size(); i++) {
                assertThat(row.steps().get(i).grey())
                        .isGreaterThan(row.steps().get(i - 1).grey());
            }
            assertThat(row.steps()).allMatch(step -> step.spotGrey() <= step.grey());
        });
    }

    @Test
    void each_row_has_three_to_six_spots_and_not_always_as_many() {
        List<Integer> counts = IntStream.range(0, 60)
                .mapToObj(StepWedge::of)
                .flatMap(wedge -> wedge.rows().stream())
                .map(StepWedge.Row::spots)
                .distinct()
                .sorted()
                .toList();
        assertThat(counts).containsExactly(3, 4, 5, 6);
    }

    @Test
    void tells_the_rows_that_were_counted_wrong() {
        List<Integer> right = WEDGE.rows().stream().map(StepWedge.Row::spots).toList();
        assertThat(WEDGE.wrong(right)).isEmpty();
        assertThat(WEDGE.wrong(List.of(right.get(0), right.get(1) - 1, right.get(2))))
                .containsExactly(StepWedge.End.MIDDLE);
        assertThat(WEDGE.wrong(List.of(right.get(0)))).containsExactly(StepWedge.End.MIDDLE, StepWedge.End.DARK);
    }
}
