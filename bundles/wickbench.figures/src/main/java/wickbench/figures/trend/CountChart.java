package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;
import wickbench.figures.Inputs;

/**
 * The c chart of events in equal areas or times: c̄ ± 3√c̄. Source: NIST/SEMATECH e-Handbook §6.3.3.1.
 *
 * @param chart counts with their limits
 */
public record CountChart(LimitChart chart) {

    /** Makes the chart of whole counts from 0 on. */
    public static CountChart of(List<Long> counts, Basis basis) {
        Series.atLeast(counts, 1);
        Series.each(Series.numbers(counts), count -> Inputs.count("count", (long) count));
        double centre = centre(counts, basis);
        double half = Series.SIGMAS * Math.sqrt(centre);
        List<Point> points = new ArrayList<>(counts.size());
        for (long count : counts) {
            int number = points.size() + 1;
            points.add(new Point(number, count, Math.max(0, centre - half), centre + half, basis.counts(number)));
        }
        return new CountChart(LimitChart.withRuns(centre, centre, points));
    }

    private static double centre(List<Long> counts, Basis basis) {
        return basis instanceof Basis.Known known
                ? Inputs.notNegative("centre", known.centre())
                : Series.mean(Series.numbers(Series.atLeast(basis.counted(counts), 1)));
    }
}
