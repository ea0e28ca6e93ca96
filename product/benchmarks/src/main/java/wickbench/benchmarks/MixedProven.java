package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import wickbench.reading.plan.PlanCheck;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.RunPlan;
import wickbench.reading.plan.RunPlanner;

/** How many mixed runs are planned with a proof; the checker must find no fault in any. */
final class MixedProven implements Contest {
    private final String figure;
    private final List<PlanRequest> runs;
    private final Predicate<RunPlan> proven;

    private MixedProven(String figure, List<PlanRequest> runs, Predicate<RunPlan> proven) {
        this.figure = figure;
        this.runs = runs;
        this.proven = proven;
    }

    /** That no plan is shorter. */
    static MixedProven shortest(int runs) {
        return new MixedProven("mixed runs proven shortest", MixedRuns.drawn(runs, false), RunPlan::optimal);
    }

    /** The same around strips that run. */
    static MixedProven anew(int runs) {
        return new MixedProven("begun mixed runs proven shortest", MixedRuns.drawn(runs, true), RunPlan::optimal);
    }

    /** That no plan is better by waits and slack either. */
    static MixedProven allAims(int runs) {
        return new MixedProven("mixed runs proven by all three aims", MixedRuns.drawn(runs, false), RunPlan::refined);
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "%s, of %,d", figure, runs.size());
    }

    @Override
    public Unit unit() {
        return Unit.SHARE;
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
        return new Field(new Share(), List.of(new Baseline(new All(1), 1)));
    }

    private final class Share implements Contestant {
        @Override
        public String name() {
            return "the planner";
        }

        @Override
        public double lap() {
            double all = 0;
            for (PlanRequest run : runs) {
                RunPlan plan = RunPlanner.plan(run);
                if (!PlanCheck.faults(run, plan).isEmpty()) {
                    throw new IllegalStateException(PlanCheck.faults(run, plan).toString());
                }
                all += proven.test(plan) ? 1 : 0;
            }
            return all / runs.size();
        }
    }

    private record All(double lap) implements Contestant {
        @Override
        public String name() {
            return "all of them";
        }
    }
}
