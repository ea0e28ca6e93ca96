package wickbench.figures.trend;

/**
 * A point of a chart with the limits that hold for it.
 *
 * @param number counted from 1
 * @param value in the chart's unit
 * @param lower the lower limit; where the unit ends above it, the end of the unit (a share or count of 0)
 * @param upper the upper limit; a share's is at most 1
 * @param counted false for a point that was set aside
 */
public record Point(int number, double value, double lower, double upper, boolean counted) {

    boolean above() {
        return counted && value > upper;
    }

    boolean below() {
        return counted && value < lower;
    }
}
