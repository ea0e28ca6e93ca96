package wickbench.widgets;

import java.math.BigDecimal;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Severity;
import wickbench.reading.OutcomeWords;

/** A word with the shape and the colour that go with it. */
public record Mark(String word, Shape shape, Meaning meaning) {

    /** Returns how an outcome is marked everywhere in the house; the word says no more than the strip does. */
    public static Mark of(Outcome outcome) {
        return of(outcome, BigDecimal.ONE);
    }

    /**
     * Returns how the outcome of a thinned sample is marked: the word says how thin it was.
     *
     * @param dilution how many times thinner than the method's own steps; 1 is undiluted
     */
    public static Mark of(Outcome outcome, BigDecimal dilution) {
        String word = OutcomeWords.text(outcome, dilution);
        return switch (outcome) {
            case NEGATIVE -> new Mark(word, Shape.RING, Meaning.CALM);
            case POSITIVE -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
            case POSITIVE_ABOVE_RANGE -> new Mark(word, Shape.DOUBLE_TRIANGLE, Meaning.EXTREME);
            case INVALID -> new Mark(word, Shape.CROSS, Meaning.CAUTION);
        };
    }

    /** Returns how a finding of this severity is marked everywhere in the house. */
    public static Mark of(Severity severity, String word) {
        return switch (severity) {
            case VOIDS -> new Mark(word, Shape.CROSS, Meaning.CAUTION);
            case BARS_NEGATIVE -> new Mark(word, Shape.DIAMOND, Meaning.CAUTION);
            case CAUTION -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
        };
    }
}
