package wickbench.stock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.EntryRef;

/**
 * What a fridge did in a time.
 *
 * @param points the lowest and highest reading of each stretch, in order; a stretch without reading has none
 * @param excursions outside the fridge's own range, gaps and stuck spells among them, in order
 * @param kinetic the mean kinetic temperature, °C; a screening figure that excuses nothing
 * @param readings how many there were
 * @param sources the entries that it is drawn from, earliest first
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
        long readings,
        List<Source> sources) {
    public FridgeTrace {
        points = List.copyOf(points);
        excursions = List.copyOf(excursions);
        sources = List.copyOf(sources);
    }

    /**
     * An entry that tells of a stretch of time.
     *
     * @param readings how many; 0 of a thermometer that shows lowest and highest
     */
    public record Source(EntryRef entry, Instant from, Instant to, long readings) {}

    /** The readings of a stretch of time. */
    public record Point(Instant from, Duration width, double low, double high) {}
}
