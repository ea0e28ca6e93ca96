package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * The p chart of shares of groups that may differ in size, plain or with their over-dispersion (p′).
 *
 * <p>Sources: Montgomery, <em>Introduction to Statistical Quality Control</em>, chapter 7; NIST/SEMATECH e-Handbook §6.3.3.2; p′:
 * Laney, Quality Engineering 14:531 (2002).
 *
 * @param chart shares with their limits
 * @param spread σ_z, by which the limits of p′ are widened (or narrowed); 1 for the plain chart
 */
public record ProportionChart(LimitChart chart, double spread) {

    /** Returns the plain chart: p̄ ± 3√(p̄(1 − p̄)/nᵢ), p̄ = Σcounts ÷ Σsizes. */
    public static ProportionChart plain(List<Group> groups, Basis basis) {
        double centre = centre(groups, basis);
        return new ProportionChart(chart(groups, basis, centre, 1), 1);
    }

    /**
     * Returns p̄ ± 3σ_z√(p̄(1 − p̄)/nᵢ), where zᵢ = (pᵢ − p̄)/√(p̄(1 − p̄)/nᵢ) and σ_z = mean|zᵢ − zᵢ₋₁| ÷ 1.128.
     *
     * @param groups at least two that count
     */
    public static ProportionChart overdispersed(List<Group> groups, Basis basis) {
        double centre = centre(groups, basis);
        if (centre == 0 || centre == 1) {
            throw NoAnswer.of("", "trend.no-spread");
        }
        double[] z = Series.atLeast(basis.counted(groups), 2).stream()
                .mapToDouble(group -> (group.share() - centre) / deviation(centre, group))
                .toArray();
        double spread = Series.spread(z);
        return new ProportionChart(chart(groups, basis, centre, spread), spread);
    }

    /**
     * Returns the same with the centre and σ_z of an earlier period.
     *
     * @param spread σ_z of that period
     */
    public static ProportionChart overdispersed(List<Group> groups, Basis.Known basis, double spread) {
        double wide = Inputs.notNegative("spread", spread);
        return new ProportionChart(chart(groups, basis, centre(groups, basis), wide), wide);
    }

    private static LimitChart chart(List<Group> groups, Basis basis, double centre, double spread) {
        List<Point> points = new ArrayList<>(groups.size());
        for (Group group : groups) {
            int number = points.size() + 1;
            double half = Series.SIGMAS * spread * deviation(centre, group);
            points.add(new Point(
                    number,
                    group.share(),
                    Math.max(0, centre - half),
                    Math.min(1, centre + half),
                    basis.counts(number)));
        }
        return LimitChart.withRuns(centre, centre, points);
    }

    private static double centre(List<Group> groups, Basis basis) {
        Series.atLeast(groups, 1);
        if (basis instanceof Basis.Known known) {
            return Inputs.probability("centre", known.centre());
        }
        List<Group> counted = Series.atLeast(basis.counted(groups), 1);
        long counts = counted.stream().mapToLong(Group::count).sum();
        return (double) counts / counted.stream().mapToLong(Group::size).sum();
    }

    private static double deviation(double centre, Group group) {
        return Math.sqrt(centre * (1 - centre) / group.size());
    }
}
