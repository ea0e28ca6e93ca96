package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.function.LongSupplier;
import wickbench.reading.plan.RunPlan;
import wickbench.reading.plan.RunPlanner;

/** How long 20 strips take when planned, against what people do without a plan. */
final class PlanTotal implements Contest {
    private static final double AGAINST_BLOCKS = 0.59;
    private static final double AGAINST_ONE_BY_ONE = 0.16;

    @Override
    public String figure() {
        return "20 strips planned, total time";
    }

    @Override
    public Unit unit() {
        return Unit.SECONDS;
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
        return new Field(
                new Takes("the plan, proven optimal", PlanTotal::planned),
                List.of(
                        new Baseline(new Takes("dipped and read in blocks", PlanTotal::inBlocks), AGAINST_BLOCKS),
                        new Baseline(new Takes("one by one", PlanTotal::oneByOne), AGAINST_ONE_BY_ONE)));
    }

    private static long planned() {
        RunPlan plan = RunPlanner.shortest(PlanCases.twenty());
        if (!plan.optimal()) {
            throw new IllegalStateException("not proven: " + plan.total() + ", bound " + plan.bound());
        }
        return plan.total().toSeconds();
    }

    /** Dips the largest block that can then be read in a go, each strip in its window, and then the next. */
    private static long inBlocks() {
        int largest = 1;
        while (largest < PlanCases.STRIPS && firstLook(largest + 1) <= latestFirstLook()) {
            largest++;
        }
        long total = 0;
        for (int left = PlanCases.STRIPS; left > 0; left -= largest) {
            int block = Math.min(left, largest);
            total += firstLook(block) + block * PlanCases.LOOK.toSeconds();
        }
        return total;
    }

    /** When the first look may begin, so that looks follow one another and the last strip has developed. */
    private static long firstLook(int block) {
        return block * PlanCases.HANDS_ON.toSeconds()
                + PlanCases.DEVELOP.toSeconds()
                - (block - 1) * PlanCases.LOOK.toSeconds();
    }

    private static long latestFirstLook() {
        return PlanCases.HANDS_ON.plus(PlanCases.DEVELOP).plus(PlanCases.WINDOW).toSeconds();
    }

    private static long oneByOne() {
        return PlanCases.STRIPS
                * PlanCases.HANDS_ON
                        .plus(PlanCases.DEVELOP)
                        .plus(PlanCases.LOOK)
                        .toSeconds();
    }

    private record Takes(String name, LongSupplier seconds) implements Contestant {
        @Override
        public double lap() {
            return seconds.getAsLong();
        }
    }
}
