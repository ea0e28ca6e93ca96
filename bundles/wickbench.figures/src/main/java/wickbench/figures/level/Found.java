package wickbench.figures.level;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.figures.NoAnswer;

/** What a result says of the food in mg/kg, on the basis of the action level. */
public sealed interface Found {

    /**
     * The content lies in a range.
     *
     * @param from at least this; 0 when nothing was detected
     * @param below less than this: the limit of a method that detected nothing; empty for a positive, which is open above
     */
    record InRange(BigDecimal from, Optional<BigDecimal> below) implements Found {
        public InRange {
            Decimals.notNegative("from", from);
            if (below.isPresent() && below.get().compareTo(from) <= 0) {
                throw NoAnswer.of("below", "range.empty", below.get().toPlainString(), from.toPlainString());
            }
        }
    }

    /** A rinse or a swab whose carry-over into the food is not stated, or another basis. */
    record NotOfFood() implements Found {}

    static Found notDetected(BigDecimal limit) {
        return new InRange(BigDecimal.ZERO, Optional.of(Decimals.positive("limit", limit)));
    }

    static Found detected(BigDecimal from) {
        return new InRange(from, Optional.empty());
    }
}
