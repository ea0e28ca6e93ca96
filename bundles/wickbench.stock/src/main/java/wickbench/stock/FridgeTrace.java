package wickbench.stock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a fridge did in a time.
 *
 * @param points the lowest and highest reading of each stretch, in order; a stretch without reading has none
 * @param excursions outside the fridge's own range, gaps and stuck spells among them, in order
 * @param kinetic the mean kinetic temperature, °C; a screening figure that excuses nothing
 * @param readings how many there were
 */
public record FridgeTrace(
        Fridge fridge,
        Instant from,
        Instant to,
        List<Point> points,
        List<Excursion> excursions,
        Optional<Double> kinetic,
        Optional<Double> mean,
        Optional<Double> lowest,
        Optional<Double> highest,
        long readings) {
    public FridgeTrace {
        points = List.copyOf(points);
        excursions = List.copyOf(excursions);
    }

    /** The readings of a stretch of time. */
    public record Point(Instant from, Duration width, double low, double high) {}
}
