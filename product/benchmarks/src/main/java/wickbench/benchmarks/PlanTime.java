package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import wickbench.reading.plan.PlanCheck;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.RunPlan;
import wickbench.reading.plan.RunPlanner;

/** How long making a plan takes, against a fixed limit. */
final class PlanTime implements Contest {
    private final String figure;
    private final PlanRequest request;
    private final double limit;
    private final Maker maker;

    private PlanTime(String figure, PlanRequest request, double limit, Maker maker) {
        this.figure = figure;
        this.request = request;
        this.limit = limit;
        this.maker = maker;
    }

    /** Until it is proven that no plan is shorter. */
    static PlanTime proof() {
        return new PlanTime("20 strips, until the shortest plan is proven", PlanCases.twenty(), 100, request -> {
            RunPlan plan = RunPlanner.shortest(request);
            if (!plan.optimal()) {
                throw new IllegalStateException("not proven");
            }
            return plan;
        });
    }

    /** A run under way, five strips started. */
    static PlanTime again() {
        return new PlanTime("20 strips planned anew, 5 of them running", PlanCases.underWay(), 50, RunPlanner::quickly);
    }

    @FunctionalInterface
    private interface Maker {
        RunPlan make(PlanRequest request);
    }

    @Override
    public String figure() {
        return figure;
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 15;
    }

    @Override
    public int warmUps() {
        return 100;
    }

    @Override
    public Field field(Path folder) {
        return new Field(new Ours(), List.of(new Baseline(new Allowed(limit), 1)));
    }

    private final class Ours implements Contestant {
        @Override
        public String name() {
            return "the planner";
        }

        @Override
        public double lap() throws Exception {
            RunPlan[] plan = new RunPlan[1];
            double millis = Timed.millis(() -> plan[0] = maker.make(request));
            if (!PlanCheck.faults(request, plan[0]).isEmpty()) {
                throw new IllegalStateException(
                        PlanCheck.faults(request, plan[0]).toString());
            }
            return millis;
        }
    }

    private record Allowed(double lap) implements Contestant {
        @Override
        public String name() {
            return "a fixed limit";
        }
    }
}
