package wickbench.stock.room;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wickbench.figures.store.Intermittent;
import wickbench.figures.store.Reorder;
import wickbench.stock.Kit;

/**
 * What was used of a kit, day by day of the site, in the days looked back on.
 *
 * @param perDay strips, oldest day first; the day that is not over is left out
 */
record Demand(List<Double> perDay) {
    /** Twelve weeks: long enough for weekly rhythms, short enough to follow a change. */
    static final int DAYS = 84;

    /** Below this part of days with a use, demand comes now and then and is smoothed by itself. */
    private static final double REGULAR = 0.5;

    private static final double ALPHA = 0.1;

    static Demand of(List<Instant> taken, LocalDate today, ZoneId zone) {
        long first = taken.isEmpty()
                ? 0
                : Math.min(DAYS, ChronoUnit.DAYS.between(LocalDate.ofInstant(taken.get(0), zone), today));
        double[] days = new double[(int) first];
        for (Instant each : taken) {
            long ago = ChronoUnit.DAYS.between(LocalDate.ofInstant(each, zone), today);
            if (ago > 0 && ago <= first) {
                days[(int) (first - ago)]++;
            }
        }
        return new Demand(Arrays.stream(days).boxed().toList());
    }

    boolean none() {
        return perDay.stream().noneMatch(each -> each > 0);
    }

    boolean regular() {
        return perDay.stream().filter(each -> each > 0).count() >= REGULAR * perDay.size();
    }

    String method() {
        if (none()) {
            return "none";
        }
        return regular() ? "normal" : "intermittent";
    }

    /** Returns strips a day: the mean, or where demand is irregular the corrected rate of Syntetos and Boylan. */
    double rate() {
        if (none()) {
            return 0;
        }
        return regular()
                ? mean()
                : Intermittent.of(new ArrayList<>(perDay), ALPHA).halfCorrected();
    }

    private double mean() {
        return perDay.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    /** Returns the standard deviation of single days, with n − 1. */
    double deviation() {
        double mean = mean();
        double squares = perDay.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        return perDay.size() < 2 ? 0 : Math.sqrt(squares / (perDay.size() - 1));
    }

    Reorder reorder(Kit.Supply supply) {
        double service = supply.service().doubleValue();
        return regular() && !none()
                ? Reorder.normal(
                        new Reorder.Supply(rate(), deviation(), supply.leadDays(), supply.leadDeviation()), service)
                : Reorder.poisson(rate() * supply.leadDays(), service);
    }
}
