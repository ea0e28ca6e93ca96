package wickbench.figures.store;

import java.util.List;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * Demand that comes now and then: the size of a demand and the interval between two, each smoothed by itself.
 *
 * <p>The first demand and its interval, counted from the first period, start the smoothing. Sources: Croston, Operational Research
 * Quarterly 23:289 (1972); the corrections of Syntetos &amp; Boylan (2005) and of Shale, Boylan &amp; Johnston (2006).
 *
 * @param size the smoothed size of a demand
 * @param interval the smoothed interval, in periods
 * @param plain size ÷ interval: demand a period, somewhat too high
 * @param halfCorrected plain × (1 − α/2), Syntetos–Boylan
 * @param fullCorrected plain × (1 − α/(2 − α)), Shale–Boylan–Johnston
 */
public record Intermittent(double size, double interval, double plain, double halfCorrected, double fullCorrected) {

    /**
     * Smooths the demands of equal periods.
     *
     * @param demands at least 0 each, not all 0
     * @param alpha the weight of the newest demand, above 0, at most 1
     */
    public static Intermittent of(List<Double> demands, double alpha) {
        Inputs.positive("alpha", Inputs.probability("alpha", alpha));
        double size = 0;
        double interval = 0;
        int since = 0;
        for (int i = 0; i < demands.size(); i++) {
            double demand = demand(demands, i);
            since++;
            if (demand > 0) {
                boolean first = size == 0;
                size = first ? demand : size + alpha * (demand - size);
                interval = first ? since : interval + alpha * (since - interval);
                since = 0;
            }
        }
        if (size == 0) {
            throw NoAnswer.of("", "demand.none");
        }
        double plain = size / interval;
        return new Intermittent(size, interval, plain, plain * (1 - alpha / 2), plain * (1 - alpha / (2 - alpha)));
    }

    private static double demand(List<Double> demands, int row) {
        try {
            return Inputs.notNegative("demand", demands.get(row));
        } catch (NoAnswer e) {
            throw e.inRow(row);
        }
    }
}
