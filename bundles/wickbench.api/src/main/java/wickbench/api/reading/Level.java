package wickbench.api.reading;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.method.Unit;

/**
 * What an outcome says in numbers: an interval, never a point.
 *
 * @param low detected from here on; empty when open
 * @param high not detected, so below this at the given probability; empty when open
 * @param probability detection probability at {@code high}, if the method states one
 */
public record Level(
        Optional<BigDecimal> low,
        Optional<BigDecimal> high,
        Unit unit,
        Method.Basis basis,
        Optional<BigDecimal> probability) {

    /** Returns the same in another unit of its kind, exactly. */
    public Level in(Unit other) {
        return new Level(
                low.map(end -> unit.convert(end, other)),
                high.map(end -> unit.convert(end, other)),
                other,
                basis,
                probability);
    }
}
