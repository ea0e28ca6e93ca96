package wickbench.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How far the strips of a kit will go.
 *
 * @param demand strips a day, the mean of the days looked back on
 * @param deviation its standard deviation, of single days
 * @param days how many days were looked back on
 * @param strips usable now or once checked
 * @param point the stock at which to order again
 * @param safety the part of it that guards against chance
 * @param method {@code none}, {@code normal}, {@code poisson} or {@code intermittent}: how demand was taken
 * @param runsOut the first day without strips, at this demand and with what expires on the way
 * @param orderBy the last day on which an order comes in time; today or earlier means now
 * @param boxes how many boxes to order then
 * @param steps the run-down, a step for each day on which something changes
 * @param waste what will expire unused, lot by lot
 */
public record Outlook(
        String kit,
        double demand,
        double deviation,
        int days,
        long strips,
        double point,
        double safety,
        String method,
        Optional<LocalDate> runsOut,
        Optional<LocalDate> orderBy,
        long boxes,
        List<Step> steps,
        List<Waste> waste) {
    public Outlook {
        steps = List.copyOf(steps);
        waste = List.copyOf(waste);
    }

    /** What is left at the end of a day. */
    public record Step(LocalDate day, double strips) {}

    /** Strips of a lot that will be left when it goes out of date. */
    public record Waste(String lot, LocalDate expiry, long strips) {}
}
