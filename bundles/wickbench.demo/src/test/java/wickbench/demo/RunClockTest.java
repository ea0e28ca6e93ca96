package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Times;

class RunClockTest {
    private static final Instant BEGINS = Instant.parse("2026-03-02T08:00:00Z");
    private final Plant plant = DemoFiles.plant();
    private final Map<MethodId, Method> methods = DemoFiles.methods(plant);

    private List<Times> times(long seed, String method, int strips) {
        Plant.Line line = plant.lines().get(0);
        Task task = Task.sample(
                "x", line.points().get(0), methods.get(new MethodId(method)), Reason.START_UP, Load.NONE, 1);
        Crew crew = Crew.of(plant, 0, LocalDate.of(2026, 3, 2), 0);
        Run run = new Run(line, BEGINS, crew, Optional.empty(), Collections.nCopies(strips, task));
        return new RunClock(new Chance(seed)).times(run);
    }

    @Property(tries = 200)
    void nothing_happens_before_its_time(@ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int strips) {
        List<Times> times = times(seed, "hazelnut-swab-dry", strips);

        assertThat(times).hasSize(strips).allSatisfy(each -> {
            assertThat(each.outOfFridge().orElseThrow()).isBefore(BEGINS);
            assertThat(each.extracted().orElseThrow())
                    .isBetween(BEGINS, each.started().orElseThrow());
            assertThat(each.read().orElseThrow()).isAfter(each.started().orElseThrow());
        });
    }

    @Test
    void nearly_every_strip_is_read_within_its_window() {
        long within = times(3, "hazelnut-swab-dry", 1000).stream()
                .map(each -> Duration.between(
                        each.started().orElseThrow(), each.read().orElseThrow()))
                .filter(waited -> waited.toSeconds() >= 300 && waited.toSeconds() <= 360)
                .count();

        assertThat(within).isBetween(970L, 999L);
    }
}
