package wickbench.plant.changeover;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wickbench.api.check.Checked;
import wickbench.api.method.Method.Timing;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.PlanStrip;
import wickbench.reading.plan.RunPlanner;
import wickbench.reading.plan.WindowRule;

/** How long one person takes to test a number of strips, each read in its window; the bench plans its runs so too. */
public final class TestTime {
    /** Of one strip, the sample's way into the tube and onto the strip; common practice, no source. */
    private static final Duration HANDS_ON = Duration.ofSeconds(45);

    /** To read one strip; common practice, no source. */
    private static final Duration LOOK = Duration.ofSeconds(20);

    private static final int SECONDS = 60;

    private final Map<List<Timing>, Integer> known = new ConcurrentHashMap<>();

    /** Returns whole minutes, rounded up: the longest extraction, then the shortest plan of the strips. */
    int minutes(List<Timing> strips) {
        List<Timing> sorted = strips.stream()
                .sorted(Comparator.comparing(Timing::develop)
                        .thenComparing(Timing::window)
                        .thenComparing(timing -> timing.shake().orElse(Duration.ZERO)))
                .toList();
        return sorted.isEmpty() ? 0 : known.computeIfAbsent(sorted, TestTime::plan);
    }

    private static int plan(List<Timing> timings) {
        List<PlanStrip> strips = new ArrayList<>();
        for (Timing timing : timings) {
            strips.add(new PlanStrip(
                    Integer.toString(strips.size() + 1), HANDS_ON, timing.develop(), timing.window(), LOOK));
        }
        Duration shake = timings.stream()
                .flatMap(timing -> timing.shake().stream())
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
        Duration total = shake.plus(total(strips));
        return (int) ((total.toSeconds() + SECONDS - 1) / SECONDS);
    }

    private static Duration total(List<PlanStrip> strips) {
        Checked<PlanRequest> whole = PlanRequest.of("changeover", strips, WindowRule.END);
        Checked<PlanRequest> request =
                whole instanceof Checked.Good ? whole : PlanRequest.of("changeover", strips, WindowRule.START);
        if (request instanceof Checked.Good<PlanRequest> good) {
            return RunPlanner.quickly(good.value()).total();
        }
        // strips that cannot be planned together are run one after another
        return strips.stream()
                .map(strip -> strip.handsOn().plus(strip.develop()).plus(strip.look()))
                .reduce(Duration.ZERO, Duration::plus);
    }
}
