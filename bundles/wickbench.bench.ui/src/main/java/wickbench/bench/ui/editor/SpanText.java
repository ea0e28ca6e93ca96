package wickbench.bench.ui.editor;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickbench.api.words.Decimals;

/** Lengths of time as people type them: {@code 7:30} is minutes and seconds, or a number with h, min or s. */
final class SpanText {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,6}):([0-5]\\d)");
    private static final Pattern NUMBER = Pattern.compile("(\\d{1,9}(?:[.,]\\d{1,3})?)\\s*(h|min|s)");
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private SpanText() {}

    /** Returns seconds as they are typed. */
    static String of(BigDecimal seconds) {
        BigDecimal[] parts = seconds.divideAndRemainder(SIXTY);
        boolean whole = seconds.stripTrailingZeros().scale() <= 0;
        return whole
                ? String.format(Locale.ROOT, "%d:%02d", parts[0].longValue(), parts[1].longValue())
                : Decimals.of(seconds) + " s";
    }

    /**
     * Returns the seconds.
     *
     * @throws IllegalArgumentException when it is no length of time, saying what was expected
     */
    static BigDecimal seconds(String typed) {
        Matcher clock = CLOCK.matcher(typed.strip());
        if (clock.matches()) {
            return new BigDecimal(clock.group(1)).multiply(SIXTY).add(new BigDecimal(clock.group(2)));
        }
        Matcher number = NUMBER.matcher(typed.strip());
        if (number.matches()) {
            BigDecimal value = new BigDecimal(number.group(1).replace(',', '.'));
            return switch (number.group(2)) {
                case "h" -> value.multiply(SIXTY).multiply(SIXTY);
                case "min" -> value.multiply(SIXTY);
                default -> value;
            };
        }
        throw new IllegalArgumentException(EditorWords.get("wrong.span", typed.strip()));
    }
}
