package wickbench.stock.log;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;

/** One way to be outside: above, below, or frozen. A reading holds until the next; over a gap, for the usual interval. */
final class Watch {
    private static final double HOUR = 3_600_000;

    private final Cause cause;
    private final double limit;
    private final boolean above;
    private final Excursions found = new Excursions();
    private long from = Long.MIN_VALUE;
    private double peak;
    private double degreeHours;

    private Watch(Cause cause, double limit, boolean above) {
        this.cause = cause;
        this.limit = limit;
        this.above = above;
    }

    static List<Watch> over(Range range) {
        List<Watch> all = new ArrayList<>();
        all.add(new Watch(Cause.WARM, range.high(), true));
        all.add(new Watch(Cause.COLD, range.low(), false));
        if (range.low() > 0) {
            // at 0 °C water freezes: judged by itself, whatever is allowed below the range
            all.add(new Watch(Cause.FROZEN, Math.nextUp(0.0), false));
        }
        return all;
    }

    void spell(long at, long until, double celsius) {
        boolean outside = above ? celsius > limit : celsius < limit;
        if (!outside) {
            end(at);
            return;
        }
        if (from == Long.MIN_VALUE) {
            from = at;
            peak = celsius;
            degreeHours = 0;
        }
        peak = above ? Math.max(peak, celsius) : Math.min(peak, celsius);
        degreeHours += Math.abs(celsius - limit) * (until - at) / HOUR;
    }

    /** Ends what is going on, because it is inside again or nobody looked. */
    void end(long at) {
        if (from != Long.MIN_VALUE) {
            found.add(new Excursion(cause, Instant.ofEpochMilli(from), Instant.ofEpochMilli(at), peak, degreeHours));
            from = Long.MIN_VALUE;
        }
    }

    Excursions found() {
        return found;
    }
}
