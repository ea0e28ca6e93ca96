package wickbench.api.chart;

import java.time.ZoneId;
import java.util.List;

/**
 * An axis with its words.
 *
 * @param unit written behind the name; empty when there is none
 */
public record Axis(String name, String unit, Scale scale) {

    /** How values lie along an axis. */
    public sealed interface Scale {}

    /** Equal steps for equal differences. */
    public record Linear() implements Scale {}

    /** Equal steps for equal ratios; values that are not above 0 are not drawn. */
    public record Logarithmic() implements Scale {}

    /** Milliseconds since 1970 UTC, told in the wall time of a zone. */
    public record Time(ZoneId zone) implements Scale {}

    /** Places with names; the value n is the place n, counted from 0. */
    public record Named(List<String> places) implements Scale {
        public Named {
            places = List.copyOf(places);
        }
    }

    public static Axis linear(String name, String unit) {
        return new Axis(name, unit, new Linear());
    }

    public static Axis time(String name, ZoneId zone) {
        return new Axis(name, "", new Time(zone));
    }

    /** Returns the name with the unit in brackets, if there is one. */
    public String title() {
        return unit.isEmpty() ? name : name + " (" + unit + ")";
    }
}
