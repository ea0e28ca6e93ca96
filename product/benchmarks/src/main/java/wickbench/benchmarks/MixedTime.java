package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.RunPlanner;

/** How long a mixed run is planned by all three aims, on average, against a fixed limit. */
final class MixedTime implements Contest {
    private static final double LIMIT = 2000;
    private final List<PlanRequest> runs;

    MixedTime(int runs) {
        this.runs = MixedRuns.drawn(runs, false);
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "a mixed run planned, mean of %,d", runs.size());
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 1;
    }

    @Override
    public int warmUps() {
        return 0;
    }

    @Override
    public Field field(Path folder) {
        return new Field(new Ours(), List.of(new Baseline(new Allowed(LIMIT), 1)));
    }

    private final class Ours implements Contestant {
        @Override
        public String name() {
            return "the planner";
        }

        @Override
        public double lap() throws Exception {
            return Timed.millis(() -> runs.forEach(RunPlanner::plan)) / runs.size();
        }
    }

    private record Allowed(double lap) implements Contestant {
        @Override
        public String name() {
            return "a fixed limit";
        }
    }
}
