package wickbench.stock.room;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.log.Range;

/** What a thermometer with memory showed. When it was outside is not known, so the whole time counts. */
record Measured(Instant from, Instant to, double low, double high) {

    List<Excursion> outside(Range range) {
        List<Excursion> found = new ArrayList<>();
        if (high > range.high()) {
            found.add(new Excursion(Cause.WARM, from, to, high, 0));
        }
        if (low < range.low()) {
            found.add(new Excursion(Cause.COLD, from, to, low, 0));
        }
        if (low <= 0 && range.low() > 0) {
            found.add(new Excursion(Cause.FROZEN, from, to, low, 0));
        }
        return found;
    }
}
