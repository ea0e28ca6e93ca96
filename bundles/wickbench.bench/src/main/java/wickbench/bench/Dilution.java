package wickbench.bench;

import java.math.BigDecimal;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how many times a sample was thinned: {@code 10}, {@code ×10}, {@code x10} or, in parts, {@code 1+9}. */
final class Dilution {
    private static final Pattern PARTS = Pattern.compile("(\\S+?)\\s*\\+\\s*(\\S+)");

    private Dilution() {}

    /**
     * Reads a dilution; 1 is undiluted.
     *
     * @param decimal how the sheet writes numbers
     * @throws IllegalArgumentException when it is none; 1:10 is refused, for some write it for 1+9 and some for 1+10
     */
    static BigDecimal parse(String text, Function<String, BigDecimal> decimal) {
        if (text.contains(":")) {
            throw new IllegalArgumentException(BenchWords.get("dilution.colon", text));
        }
        Matcher parts = PARTS.matcher(text);
        BigDecimal factor = parts.matches()
                ? inParts(decimal.apply(parts.group(1)), decimal.apply(parts.group(2)), text)
                : decimal.apply(text.replaceFirst("^[x×]\\s*", ""));
        if (factor.compareTo(BigDecimal.ONE) < 0) {
            throw new IllegalArgumentException(BenchWords.get("dilution.below-one", text));
        }
        return factor;
    }

    private static BigDecimal inParts(BigDecimal sample, BigDecimal liquid, String text) {
        if (sample.signum() <= 0 || liquid.signum() < 0) {
            throw new IllegalArgumentException(BenchWords.get("dilution.below-one", text));
        }
        return sample.add(liquid)
                .divide(sample, java.math.MathContext.DECIMAL32)
                .stripTrailingZeros();
    }
}
