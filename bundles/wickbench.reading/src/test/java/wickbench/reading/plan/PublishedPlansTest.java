package wickbench.reading.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.reading.plan.Strips.seconds;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import wickbench.api.words.Coded;

/** Optima found and proven by a constraint solver; those of equal strips and of two kits were proven again by exhaustive search. */
class PublishedPlansTest {

    @ParameterizedTest
    @CsvFileSource(resources = "runplan.csv", numLinesToSkip = 1)
    @DisplayName("The planner finds and proves the shortest total time and the least waits of every known case")
    void shortest(
            String mix,
            String variant,
            int n,
            int hands,
            int look,
            String develop,
            int window,
            int total,
            int bound,
            int lateness) {
        List<PlanStrip> strips = mix.equals("identical")
                ? Strips.equal(n, hands, 300, window, look)
                : Strips.and(Strips.equal((n + 1) / 2, hands, 300, window, look), n / 2, hands, 600, window, look);
        PlanRequest request = Strips.request(strips, Coded.of(WindowRule.class, variant));

        RunPlan plan = RunPlanner.plan(request);

        assertThat(plan.total()).isEqualTo(seconds(total));
        assertThat(plan.optimal()).isTrue();
        assertThat(plan.bound()).isEqualTo(plan.total()).isGreaterThanOrEqualTo(seconds(bound));
        assertThat(plan.lateness()).isEqualTo(seconds(lateness));
        assertThat(plan.refined()).isTrue();
        assertThat(PlanCheck.faults(request, plan)).isEmpty();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "mixedplans.csv", numLinesToSkip = 1)
    @DisplayName("A mixed run is planned as short as a constraint solver has proven, and proven to be")
    void mixed(String rule, String mix, int total) {
        List<PlanStrip> strips = List.of();
        for (String part : mix.split(" ")) {
            int[] numbers =
                    Stream.of(part.split("[x/+]")).mapToInt(Integer::parseInt).toArray();
            strips = Strips.and(strips, numbers[0], numbers[1], numbers[2], numbers[3], numbers[4]);
        }
        PlanRequest request = Strips.request(strips, Coded.of(WindowRule.class, rule));

        RunPlan plan = RunPlanner.shortest(request);

        assertThat(plan.total()).isEqualTo(seconds(total));
        assertThat(plan.optimal()).isTrue();
        assertThat(PlanCheck.faults(request, plan)).isEmpty();
    }
}
