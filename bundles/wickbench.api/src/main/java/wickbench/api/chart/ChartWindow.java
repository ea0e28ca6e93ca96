package wickbench.api.chart;

/** What of a chart is in sight. */
public record ChartWindow(Span x, Span y) {

    /** Returns the window in which every point and limit is seen, with some air around. */
    public static ChartWindow whole(Chart chart) {
        Extent x = new Extent();
        Extent y = new Extent();
        boolean bars = false;
        for (Series series : chart.series()) {
            boolean sits = series.mark() == Series.Mark.BARS;
            bars |= sits;
            for (int i = 0; i < series.size(); i++) {
                x.add(chart.x().scale(), series.x()[i]);
                y.add(chart.y().scale(), series.y()[i]);
            }
        }
        chart.limits().forEach(limit -> y.add(chart.y().scale(), limit.y()));
        if (bars) {
            y.add(chart.y().scale(), 0);
        }
        return new ChartWindow(x.span(chart.x().scale(), bars), y.span(chart.y().scale(), false));
    }

    /** The least and greatest of some values. */
    private static final class Extent {
        private static final double AIR = 0.05;
        private double low = Double.POSITIVE_INFINITY;
        private double high = Double.NEGATIVE_INFINITY;

        void add(Axis.Scale scale, double value) {
            if (Double.isFinite(value) && !(scale instanceof Axis.Logarithmic && value <= 0)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }

        Span span(Axis.Scale scale, boolean bars) {
            if (scale instanceof Axis.Named named) {
                return new Span(-0.5, Math.max(1, named.places().size()) - 0.5);
            }
            if (scale instanceof Axis.Logarithmic) {
                return low > high ? new Span(1, 10) : new Span(low / 1.25, high * 1.25);
            }
            if (low > high) {
                return new Span(0, 1);
            }
            double air = low == high ? alone(scale) : (high - low) * (bars ? 2 * AIR : AIR);
            return new Span(low - air, high + air);
        }

        private double alone(Axis.Scale scale) {
            double hour = 3_600_000;
            return scale instanceof Axis.Time ? hour : Math.max(Math.abs(low) / 2, Double.MIN_NORMAL * 4) + 0.5;
        }
    }
}
