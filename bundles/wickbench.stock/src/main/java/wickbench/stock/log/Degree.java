package wickbench.stock.log;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickbench.stock.LogShape.Degrees;

/** A temperature as a logger writes it. */
final class Degree {
    private static final Pattern CELL =
            Pattern.compile("([+\\-\u2212]?\\d{1,4}(?:[.,]\\d{1,9})?)\\s*(?:\u00c2?\u00b0\\s*)?([cCfF]?)");
    private static final double ZERO_F = 32;
    private static final double STEPS = 1.8;

    private Degree() {}

    /** Returns the number in a cell, whatever its unit. */
    static OptionalDouble number(String cell) {
        Matcher matcher = CELL.matcher(cell);
        return matcher.matches()
                ? OptionalDouble.of(
                        Double.parseDouble(matcher.group(1).replace(',', '.').replace('\u2212', '-')))
                : OptionalDouble.empty();
    }

    /** Returns the unit that a cell carries itself. */
    static Optional<Degrees> unit(String cell) {
        Matcher matcher = CELL.matcher(cell);
        return matcher.matches() && !matcher.group(2).isEmpty()
                ? Optional.of(Degrees.valueOf(matcher.group(2).toUpperCase(Locale.ROOT)))
                : Optional.empty();
    }

    /** Returns the unit that words name; empty when they name none or both. */
    static Optional<Degrees> named(String words) {
        String small = words.toLowerCase(Locale.ROOT).replace("\u00c2", "");
        boolean celsius = small.contains("\u00b0c")
                || small.contains("\u00b0 c")
                || small.contains("celsius")
                || small.matches(".*[(\\[_ ](deg ?)?c[)\\]]?\\s*");
        boolean fahrenheit = small.contains("\u00b0f")
                || small.contains("\u00b0 f")
                || small.contains("fahrenheit")
                || small.matches(".*[(\\[_ ](deg ?)?f[)\\]]?\\s*");
        if (celsius == fahrenheit) {
            return Optional.empty();
        }
        return Optional.of(celsius ? Degrees.C : Degrees.F);
    }

    static double celsius(double value, Degrees unit) {
        return unit == Degrees.C ? value : (value - ZERO_F) / STEPS;
    }
}
