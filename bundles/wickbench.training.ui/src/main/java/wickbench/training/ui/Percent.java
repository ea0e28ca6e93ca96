package wickbench.training.ui;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import wickbench.api.words.Decimals;

/** Writes parts of a whole as people read them. */
final class Percent {
    private static final BigDecimal HUNDRED = new BigDecimal(100);

    private Percent() {}

    /** Returns two figures that count, and the sign. */
    static String of(double part) {
        return TrainingUiWords.get("percent", digits(part));
    }

    static String range(double low, double high) {
        return TrainingUiWords.get("percent.range", digits(low), digits(high));
    }

    /** Returns a figure between 0 and 1 as it is, or a dash. */
    static String plain(Optional<Double> value) {
        return value.map(each -> Decimals.of(each, 3)).orElse("–");
    }

    private static String digits(double part) {
        return Decimals.of(BigDecimal.valueOf(part)
                .multiply(HUNDRED)
                .round(new MathContext(2))
                .stripTrailingZeros());
    }
}
