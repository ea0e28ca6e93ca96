package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wickbench.figures.Inputs;

/**
 * The g chart of how many good ones lie between two events: ȳ ± 3√((ȳ − a)(ȳ − a + 1)), never below a.
 *
 * <p>Its lower limit is a as a rule, so points alone cannot tell that events have become more frequent; three events in a row
 * without a gap do, and so do the runs. Source: Benneyan, Health Care Management Science 4:305 (2001).
 *
 * @param chart gaps with their limits; runs about the median
 * @param likely what a geometric law with the same mean does
 */
public record GapChart(LimitChart chart, Likely likely) {
    private static final int IN_A_ROW = 3;

    /**
     * Quantiles of the geometric law, at the chances that ±3σ have under a normal law.
     *
     * @param lower at .00135
     * @param middle at .5
     * @param upper at .99865
     */
    public record Likely(long lower, long middle, long upper) {}

    /**
     * Makes the chart.
     *
     * @param gaps counts between events
     * @param least a, the smallest gap there can be: 0, or 1 when the event itself is counted
     */
    public static GapChart of(List<Long> gaps, long least) {
        return of(gaps, least, OptionalDouble.empty());
    }

    /**
     * Makes the chart with limits of an earlier period; runs are about the middle of its geometric law.
     *
     * @param known ȳ of that period; empty to take it from the gaps themselves
     */
    public static GapChart of(List<Long> gaps, long least, OptionalDouble known) {
        Series.atLeast(gaps, 1);
        Inputs.count("minimum", least);
        double[] values =
                Series.each(Series.numbers(gaps), gap -> Inputs.within("gap", gap, least, Inputs.LARGEST_COUNT));
        double centre = known.isPresent()
                ? Inputs.within("centre", known.getAsDouble(), least, Inputs.LARGEST_COUNT)
                : Series.mean(values);
        double half = Series.SIGMAS * Math.sqrt((centre - least) * (centre - least + 1));
        List<Point> points = new ArrayList<>(values.length);
        for (double value : values) {
            points.add(new Point(points.size() + 1, value, Math.max(least, centre - half), centre + half, true));
        }
        Likely likely = likely(centre, least);
        LimitChart plain =
                LimitChart.withRuns(centre, known.isPresent() ? likely.middle() : Series.median(values), points);
        return new GapChart(with(plain, withoutGap(gaps, least)), likely);
    }

    private static LimitChart with(LimitChart chart, List<Signal> more) {
        List<Signal> all = new ArrayList<>(chart.signals());
        all.addAll(more);
        return new LimitChart(chart.centre(), chart.points(), all);
    }

    private static List<Signal> withoutGap(List<Long> gaps, long least) {
        List<Signal> found = new ArrayList<>();
        int inARow = 0;
        for (int i = 0; i < gaps.size(); i++) {
            inARow = gaps.get(i) == least ? inARow + 1 : 0;
            if (inARow == IN_A_ROW) {
                found.add(new Signal(Signal.Kind.NO_GAPS, i + 1, inARow, IN_A_ROW - 1.0));
            }
        }
        return found;
    }

    private static Likely likely(double centre, long least) {
        double logNone = -Math.log1p(1 / (centre - least));
        return new Likely(
                least + quantile(0.00135, logNone), least + quantile(0.5, logNone), least + quantile(0.99865, logNone));
    }

    /** Returns the smallest k with 1 − (1 − p)^(k + 1) ≥ chance. */
    private static long quantile(double chance, double logNone) {
        // no good one ever between events: the law sits at 0
        return Double.isInfinite(logNone) ? 0 : Math.max(0, (long) Math.ceil(Math.log1p(-chance) / logNone - 1));
    }
}
