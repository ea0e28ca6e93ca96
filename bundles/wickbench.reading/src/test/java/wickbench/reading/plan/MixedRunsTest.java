package wickbench.reading.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.reading.plan.Strips.seconds;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Runs of kits that develop for different times, up to 20 strips, are proven.
 *
 * <p>No source: the totals are the planner's own. What is checked of them is that an independent checker finds no fault in the plan, and that the
 * same run read from its end, with looks and hands-on work exchanged, is proven to be as long.
 */
class MixedRunsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "30 | 15 | 12x300+60 8x480+60           |  960",
                "30 | 15 | 16x300+60 4x600+60           | 1020",
                "30 | 15 | 10x300+60 10x600+60          |  930",
                "30 | 15 | 7x300+60 7x480+60 6x600+60   |  945",
                "45 | 20 | 10x300+60 5x480+60           | 1095",
                "60 | 10 | 12x300+60 4x600+120          | 1330",
                "37 | 13 | 10x300+60 8x420+75           | 1070",
            })
    void they_are_proven_read_either_way(int hands, int look, String mix, int total) {
        PlanRequest request = Strips.request(strips(mix, hands, look), WindowRule.END);

        RunPlan plan = RunPlanner.shortest(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(plan.optimal()).isTrue();
        assertThat(plan.total()).isEqualTo(seconds(total));
        RunPlan back = RunPlanner.shortest(backwards(request));
        assertThat(back.optimal()).isTrue();
        assertThat(back.total()).isEqualTo(plan.total());
    }

    /**
     * No pause is left in them, so no plan can be shorter.
     *
     * <p>From the best that is known on, plans a sixth longer were the shortest that were found: the first needs a search from below,
     * the second one that goes on from beginnings that are not alike.
     */
    @ParameterizedTest
    @CsvSource({"3x180+300 4x300+120 5x420+90 6x600+60, END", "7x300+120 7x600+60 2x420+30 3x480+30, START"})
    void a_plan_without_an_idle_second_is_found(String mix, WindowRule rule) {
        PlanRequest request = Strips.request(strips(mix, 30, 30), rule);

        RunPlan plan = RunPlanner.shortest(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(plan.total()).isEqualTo(seconds(request.toStart().size() * (30 + 30)));
        assertThat(plan.optimal()).isTrue();
    }

    private static List<PlanStrip> strips(String mix, int hands, int look) {
        List<PlanStrip> strips = new ArrayList<>();
        for (String part : mix.trim().split(" ")) {
            String[] numbers = part.split("[x+]");
            int count = Integer.parseInt(numbers[0]);
            int develop = Integer.parseInt(numbers[1]);
            int window = Integer.parseInt(numbers[2]);
            strips = Strips.and(strips, count, hands, develop, window, look);
        }
        return strips;
    }

    private static PlanRequest backwards(PlanRequest request) {
        return Strips.request(
                request.toStart().stream()
                        .map(strip -> new PlanStrip(
                                strip.name(),
                                strip.look(),
                                strip.develop(),
                                request.rule().slack(strip),
                                strip.handsOn()))
                        .toList(),
                WindowRule.START);
    }
}
