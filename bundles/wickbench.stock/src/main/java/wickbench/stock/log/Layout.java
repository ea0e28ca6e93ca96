package wickbench.stock.log;

import java.util.List;
import java.util.Optional;
import wickbench.stock.LogShape.DateOrder;
import wickbench.stock.LogShape.Degrees;

/**
 * Where things stand in a file; columns from 0.
 *
 * @param first the number of the first row with a temperature
 * @param clock the column of the time of day where it stands apart; below 0 where it does not
 */
record Layout(char separator, long first, int time, int clock, int temperature, DateOrder order, Degrees unit) {

    Optional<Stamp> stamp(List<String> cells) {
        return Stamp.read(cells.get(time), clock < 0 ? "" : cells.get(clock));
    }

    int columns() {
        return Math.max(time, Math.max(clock, temperature)) + 1;
    }
}
