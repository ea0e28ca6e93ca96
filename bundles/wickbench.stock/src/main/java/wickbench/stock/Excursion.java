package wickbench.stock;

import java.time.Duration;
import java.time.Instant;

/**
 * A time outside a range.
 *
 * @param cause {@code WARM}, {@code COLD}, {@code FROZEN}, {@code GAP} or {@code STUCK}
 * @param from the first reading outside; of a gap, the last before it
 * @param to the first reading back inside, or the end of the file
 * @param peak the reading farthest outside, °C; of a gap or a stuck thermometer, the last one
 * @param degreeHours how far and how long together, °C·h; 0 of a gap and a stuck thermometer
 */
public record Excursion(Cause cause, Instant from, Instant to, double peak, double degreeHours) {

    public Duration length() {
        return Duration.between(from, to);
    }
}
