package wickbench.stock;

import java.util.Optional;
import wickbench.api.words.Coded;

/**
 * What is said of a logger's files, once for each fridge; what is left out is found in the file, or asked for.
 *
 * @param order the order of day, month and year
 * @param unit of the temperatures
 * @param timeColumn counted from 1
 * @param clockColumn where the time of day stands apart from the date, counted from 1
 * @param temperatureColumn counted from 1
 * @param zone by which clock it writes: an IANA zone or an offset; else the site's
 */
public record LogShape(
        Optional<DateOrder> order,
        Optional<Degrees> unit,
        Optional<Integer> timeColumn,
        Optional<Integer> clockColumn,
        Optional<Integer> temperatureColumn,
        Optional<String> zone) {
    public static final LogShape UNSAID = new LogShape(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The field of a complaint that asks in which order dates stand. */
    public static final String ASK_ORDER = "--date-order";
    /** The field of a complaint that asks for the unit. */
    public static final String ASK_UNIT = "--unit";
    /** The field of a complaint that asks which column is the temperature. */
    public static final String ASK_COLUMN = "--temperature-column";

    /** In which order a date stands. */
    public enum DateOrder implements Coded {
        YMD,
        DMY,
        MDY
    }

    /** In what a temperature is told. */
    public enum Degrees implements Coded {
        C,
        F
    }

    /** Returns this shape, and what {@code earlier} says where this is silent. */
    public LogShape or(LogShape earlier) {
        return new LogShape(
                order.or(earlier::order),
                unit.or(earlier::unit),
                timeColumn.or(earlier::timeColumn),
                clockColumn.or(earlier::clockColumn),
                temperatureColumn.or(earlier::temperatureColumn),
                zone.or(earlier::zone));
    }
}
