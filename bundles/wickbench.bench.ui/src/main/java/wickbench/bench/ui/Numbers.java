package wickbench.bench.ui;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers as people type them; each complains by an {@link IllegalArgumentException}. */
final class Numbers {
    private static final Pattern PARTS = Pattern.compile("([^+]+)\\+([^+]+)");
    /** More could not be kept exactly. */
    private static final int MOST_DIGITS = 15;

    private static final BigDecimal LONGEST_SHAKE = BigDecimal.valueOf(86_400);

    private Numbers() {}

    /** Reads a number with a decimal point or comma. */
    static BigDecimal decimal(String text) {
        String plain = text.strip().replace(',', '.');
        if (!plain.matches("-?\\d{1,15}(\\.\\d{1,15})?") || new BigDecimal(plain).precision() > MOST_DIGITS) {
            throw new IllegalArgumentException(BenchUiWords.get("number.expected"));
        }
        return new BigDecimal(plain).stripTrailingZeros();
    }

    /** Reads how many times thinner: {@code 10}, {@code ×10}, {@code x10} or, in parts, {@code 1+9}. */
    static BigDecimal dilution(String text) {
        Matcher parts = PARTS.matcher(text);
        BigDecimal times = parts.matches()
                ? inParts(decimal(parts.group(1)), decimal(parts.group(2)))
                : decimal(text.replaceFirst("^[x×]", ""));
        return atLeast(times, BigDecimal.ONE, "dilution.expected");
    }

    static BigDecimal area(String text) {
        BigDecimal area = decimal(text);
        if (area.signum() <= 0) {
            throw new IllegalArgumentException(BenchUiWords.get("area.expected"));
        }
        return area;
    }

    static long seconds(String text) {
        BigDecimal seconds = atLeast(decimal(text), BigDecimal.ZERO, "seconds.expected");
        if (seconds.scale() > 0 || seconds.compareTo(LONGEST_SHAKE) > 0) {
            throw new IllegalArgumentException(BenchUiWords.get("seconds.expected"));
        }
        return seconds.longValueExact();
    }

    private static BigDecimal inParts(BigDecimal sample, BigDecimal liquid) {
        if (sample.signum() <= 0 || liquid.signum() < 0) {
            throw new IllegalArgumentException(BenchUiWords.get("dilution.expected"));
        }
        return sample.add(liquid).divide(sample, MathContext.DECIMAL32).stripTrailingZeros();
    }

    private static BigDecimal atLeast(BigDecimal value, BigDecimal least, String complaint) {
        if (value.compareTo(least) < 0) {
            throw new IllegalArgumentException(BenchUiWords.get(complaint));
        }
        return value;
    }
}
