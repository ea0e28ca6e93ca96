package wickbench.api.chart;

/** A stretch of an axis, from a lower to a higher value. */
public record Span(double low, double high) {
    public Span {
        if (!(low < high) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new IllegalArgumentException("expected low below high, found " + low + " and " + high);
        }
    }

    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    public double length() {
        return high - low;
    }
}
