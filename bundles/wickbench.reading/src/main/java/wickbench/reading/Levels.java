package wickbench.reading;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Sample;

/**
 * What an outcome says in numbers: an interval in the sample, with unit and basis.
 *
 * <p>A Negative is bounded above by the method's limit; a Positive is open unless the method states what a positive starts
 * from; above the range it starts from the hook's onset, if known. A limit that holds in the extract is multiplied by the
 * preparation, one that holds in the sample never is; a dilution beyond the method's own steps thins what is in the tube and
 * multiplies either.
 */
public final class Levels {
    private Levels() {}

    /**
     * Returns the interval; empty when Invalid, which says nothing.
     *
     * @throws IllegalArgumentException when the limit holds in an extract whose volume the method does not state
     */
    public static Optional<Level> of(Method method, Sample sample, Outcome outcome) {
        Scale scale = Scale.of(method, sample);
        return switch (outcome) {
            case INVALID -> Optional.empty();
            case NEGATIVE ->
                Optional.of(new Level(
                        Optional.empty(),
                        Optional.of(scale.apply(method.limit().value().value())),
                        scale.unit(),
                        method.target().basis(),
                        method.limit().probability().map(Decimals::plain)));
            case POSITIVE -> Optional.of(from(method, scale, method.positiveFrom()));
            case POSITIVE_ABOVE_RANGE ->
                Optional.of(from(method, scale, method.hookOnset().or(method::positiveFrom)));
        };
    }

    private static Level from(Method method, Scale scale, Optional<BigDecimal> low) {
        return new Level(
                low.map(scale::apply),
                Optional.empty(),
                scale.unit(),
                method.target().basis(),
                Optional.empty());
    }
}
