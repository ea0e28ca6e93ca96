package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import wickbench.reading.plan.PlanCheck;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.RunPlanner;

/** How many plans of runs drawn by chance cannot be done, by a checker that knows nothing of the planner. */
final class PlansChecked implements Contest {
    private static final long SEED = 20260302;
    private final int plans;

    PlansChecked(int plans) {
        this.plans = plans;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "plans that cannot be done, of %,d drawn by chance", plans);
    }

    @Override
    public Unit unit() {
        return Unit.COUNT;
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
        return new Field(new Faulty(), List.of(new Baseline(new All(plans), 0)));
    }

    private final class Faulty implements Contestant {
        @Override
        public String name() {
            return "the planner";
        }

        @Override
        public double lap() {
            Random chance = new Random(SEED);
            int faulty = 0;
            for (int i = 0; i < plans; i++) {
                PlanRequest request = PlanCases.drawn(chance);
                faulty += PlanCheck.faults(request, RunPlanner.quickly(request)).isEmpty() ? 0 : 1;
            }
            return faulty;
        }
    }

    private record All(double lap) implements Contestant {
        @Override
        public String name() {
            return "all of them";
        }
    }
}
