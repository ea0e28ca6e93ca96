package wickbench.reading.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.reading.plan.Strips.seconds;
import static wickbench.reading.plan.Strips.strip;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;

class PlanRulesTest {

    @Test
    void what_cannot_be_planned_is_told_in_a_line() {
        assertThat(told(strip("1", 30, 0, 60, 15)))
                .containsExactly("run: strip 1 develop: expected above 0 s and at most one day, found 0 s");
        assertThat(told(strip("1", 0, 300, 60, 15))).hasSize(1);
        assertThat(told(strip("1", 30, 300, 60, 0))).hasSize(1);
        assertThat(told(strip("1", 30, 300, 10, 15)))
                .containsExactly("run: strip 1 window: a window of 10 s is shorter than the look of 15 s");
        assertThat(told(strip("1", 30, 300, -1, 15))).hasSize(1);
        assertThat(told(strip("1", 90_000, 300, 60, 15))).hasSize(1);
        assertThat(told(strip("1", 30, 300, 90_000, 15))).hasSize(1);
        assertThat(told(strip(" ", 30, 300, 60, 15))).containsExactly("run: strip: has no number");
        assertThat(told(strip("1", 30, 300, 60, 15), strip("1", 30, 300, 60, 15)))
                .containsExactly("run: strip 1: two strips have this number");
        assertThat(told(strip("1", 30, 300, 15, 15))).isEmpty();
    }

    @Test
    void a_window_as_short_as_nothing_is_enough_where_only_the_start_must_lie_in_it() {
        assertThat(PlanRequest.of("run", List.of(strip("1", 30, 300, 0, 15)), WindowRule.START))
                .isInstanceOf(Checked.Good.class);
    }

    @Test
    void no_more_strips_than_can_be_planned_together() {
        Checked<PlanRequest> many =
                PlanRequest.of("run", Strips.equal(PlanRequest.MOST + 1, 30, 300, 60, 15), WindowRule.END);

        assertThat(many.complaints())
                .extracting(Complaint::oneLine)
                .containsExactly("run: strips: expected at most 1000, found 1001");
    }

    @Test
    void times_beyond_a_day_are_refused() {
        StartedStrip ages = new StartedStrip(strip("1", 30, 300, 60, 15), Duration.ofDays(-2));

        assertThat(told(new PlanRequest(List.of(ages), List.of(), WindowRule.END, Duration.ZERO)))
                .hasSize(1);
        assertThat(told(new PlanRequest(List.of(), List.of(), WindowRule.END, seconds(-1))))
                .hasSize(1);
        assertThat(told(new PlanRequest(List.of(), List.of(), WindowRule.END, Duration.ofDays(2))))
                .hasSize(1);
    }

    private static List<String> told(PlanStrip... strips) {
        return told(new PlanRequest(List.of(), List.of(strips), WindowRule.END, Duration.ZERO));
    }

    private static List<String> told(PlanRequest request) {
        return PlanRequest.of("run", request).complaints().stream()
                .map(Complaint::oneLine)
                .toList();
    }
}
