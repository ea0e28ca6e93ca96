package wickbench.reading;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Verdict;

/**
 * What several dilutions of one sample say together.
 *
 * @param outcome the sample's outcome; empty when nothing says it: a diluted Negative alone, or a sign not yet repeated
 * @param interference something in the undiluted sample is suspected to hide the allergen
 * @param sign an Invalid with a sign of allergen was not repeated at its dilution
 * @param level the interval that all of them leave; empty when nothing bounds it
 */
public record Bracket(Optional<Outcome> outcome, boolean interference, boolean sign, Optional<Level> level) {

    /** One dilution of the sample; how thin it was stands in {@link Sample#dilution}. */
    public record Dilution(Sample sample, Verdict verdict) {
        BigDecimal times() {
            return sample.dilution();
        }

        boolean neat() {
            return times().compareTo(BigDecimal.ONE) == 0;
        }

        boolean says(Outcome outcome) {
            return verdict.outcome() == outcome;
        }

        boolean positive() {
            return verdict.outcome().positive();
        }
    }

    /**
     * Joins the dilutions of one sample.
     *
     * <p>Any Positive makes the sample Positive. Where the undiluted strip said Negative and a diluted one Positive, there was
     * more than a strip without hook line can show; a strip whose hook line stood, or a competitive one, suspects an
     * interference instead. A diluted Negative bounds the amount and is never the sample's Negative.
     *
     * @param dilutions in order of reading, all judged by {@code method}
     */
    public static Bracket of(Method method, List<Dilution> dilutions) {
        boolean sign = dilutions.stream().anyMatch(strip -> openSign(strip, dilutions));
        Optional<Outcome> outcome = outcome(method.format(), sign, dilutions);
        boolean interference = method.format() != Format.SANDWICH && contradicts(dilutions);
        return new Bracket(outcome, interference, sign && !positive(dilutions), level(dilutions));
    }

    private static Optional<Outcome> outcome(Format format, boolean sign, List<Dilution> dilutions) {
        if (any(dilutions, strip -> strip.says(Outcome.POSITIVE_ABOVE_RANGE))
                || format == Format.SANDWICH && contradicts(dilutions)) {
            return Optional.of(Outcome.POSITIVE_ABOVE_RANGE);
        }
        if (positive(dilutions)) {
            return Optional.of(Outcome.POSITIVE);
        }
        return neatNegative(dilutions) && !sign ? Optional.of(Outcome.NEGATIVE) : Optional.empty();
    }

    private static boolean openSign(Dilution strip, List<Dilution> dilutions) {
        List<Dilution> later = dilutions.subList(dilutions.indexOf(strip) + 1, dilutions.size());
        return strip.verdict().sign()
                && !any(
                        later,
                        other -> !other.says(Outcome.INVALID) && other.times().compareTo(strip.times()) == 0);
    }

    /** Tells whether the undiluted strip said Negative where a thinner one said Positive. */
    private static boolean contradicts(List<Dilution> dilutions) {
        return neatNegative(dilutions) && any(dilutions, strip -> strip.positive() && !strip.neat());
    }

    private static boolean neatNegative(List<Dilution> dilutions) {
        return any(dilutions, strip -> strip.neat() && strip.says(Outcome.NEGATIVE));
    }

    private static boolean positive(List<Dilution> dilutions) {
        return any(dilutions, Dilution::positive);
    }

    private static boolean any(List<Dilution> dilutions, Predicate<Dilution> test) {
        return dilutions.stream().anyMatch(test);
    }

    private static Optional<Level> level(List<Dilution> dilutions) {
        Optional<BigDecimal> low = levels(dilutions.stream().filter(Dilution::positive))
                .flatMap(level -> level.low().stream())
                .max(Comparator.naturalOrder());
        // an upper end below what was detected contradicts it, and a detection is never argued away
        Optional<Level> upper = levels(dilutions.stream().filter(strip -> bounds(strip, dilutions)))
                .filter(level ->
                        low.isEmpty() || low.get().compareTo(level.high().orElseThrow()) < 0)
                .min(Comparator.comparing(level -> level.high().orElseThrow()));
        Optional<Level> any = upper.or(() -> levels(dilutions.stream()).findFirst());
        return any.map(level -> new Level(
                low, upper.flatMap(Level::high), level.unit(), level.basis(), upper.flatMap(Level::probability)));
    }

    /** A Negative bounds the amount only if no strip as thin or thinner was Positive. */
    private static boolean bounds(Dilution strip, List<Dilution> dilutions) {
        return strip.says(Outcome.NEGATIVE)
                && !any(dilutions, other -> other.positive() && other.times().compareTo(strip.times()) >= 0);
    }

    private static Stream<Level> levels(Stream<Dilution> dilutions) {
        return dilutions.flatMap(strip -> strip.verdict().level().stream());
    }
}
