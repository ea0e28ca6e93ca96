package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wickbench.figures.Limits;
import wickbench.figures.proportion.Interval;

/** Exact 95 % limits of counts: every count of some numbers of tests; R's by its beta quantile, all counts in one call. */
final class ExactLimits implements Contest {
    private static final int[] SIZES = {5, 8, 12, 20, 30, 60, 100, 140, 300, 500, 1000, 3000};
    private static final int LAPS = 5;
    private final int[] tests = IntStream.of(SIZES)
            .flatMap(n -> IntStream.rangeClosed(0, n).map(x -> n))
            .toArray();
    private final int[] positives =
            IntStream.of(SIZES).flatMap(n -> IntStream.rangeClosed(0, n)).toArray();

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "exact limits of %,d counts", tests.length);
    }

    @Override
    public Unit unit() {
        return Unit.PER_SECOND;
    }

    @Override
    public int rounds() {
        return 9;
    }

    @Override
    public int warmUps() {
        return 8;
    }

    @Override
    public Field field(Path folder) throws Exception {
        String sizes = IntStream.of(SIZES).mapToObj(Integer::toString).collect(Collectors.joining(","));
        Contestant r = Statistics.run(
                folder,
                "s <- c(" + sizes + "); n <- rep(s, s + 1); x <- sequence(s + 1) - 1; a <- x > 0; b <- x < n",
                "for (i in 1:" + LAPS + ") {"
                        + " l <- numeric(length(n)); l[a] <- qbeta(0.025, x[a], n[a] - x[a] + 1);"
                        + " u <- rep(1, length(n)); u[b] <- qbeta(0.975, x[b] + 1, n[b] - x[b]) }",
                LAPS * tests.length);
        return new Field(new Ours(), List.of(new Baseline(r, 1)));
    }

    private final class Ours implements Contestant {
        private double kept;

        @Override
        public String name() {
            return "ours";
        }

        @Override
        public double lap() throws Exception {
            return Timed.perSecond((long) LAPS * tests.length, () -> {
                for (int lap = 0; lap < LAPS; lap++) {
                    for (int i = 0; i < tests.length; i++) {
                        Limits limits = Interval.EXACT.of(positives[i], tests[i], 0.95);
                        kept += limits.upper() - limits.lower();
                    }
                }
            });
        }

        @Override
        public void close() {
            // what was reckoned must be looked at, or the compiler leaves it out
            if (!Double.isFinite(kept)) {
                throw new IllegalStateException("a limit is no number");
            }
        }
    }
}
