package wickbench.figures.sums;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people write them. */
final class Numbers {
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(\\d{1,40}\\.?\\d{0,40}|\\.\\d{1,40})([eE][-+]?\\d{1,3})?");
    private static final Pattern NO_NUMBER = Pattern.compile("(?i)nan|na|inf|infinity");
    private static final Pattern HEADING = Pattern.compile("\\p{L}.*");

    private Numbers() {}

    /** Reads a number with a decimal point or comma. */
    static Optional<BigDecimal> of(String text) {
        String plain = text.strip().replace(',', '.');
        return NUMBER.matcher(plain).matches() ? Optional.of(new BigDecimal(plain)) : Optional.empty();
    }

    /** Reads a number with a decimal point. */
    static Optional<BigDecimal> pointed(String text) {
        return text.indexOf(',') >= 0 ? Optional.empty() : of(text);
    }

    /** Tells a name of a column, which begins with a letter, from the words for no number. */
    static boolean isHeading(String cell) {
        return HEADING.matcher(cell).matches() && !NO_NUMBER.matcher(cell).matches();
    }

    /** Parts a list at blanks and semicolons; without either, at commas. */
    static String[] parts(String text) {
        String stripped = text.strip();
        if (stripped.isEmpty()) {
            return new String[0];
        }
        return stripped.matches("(?s).*[;\\s].*") ? stripped.split("[;\\s]+|,\\s+") : stripped.split(",");
    }
}
