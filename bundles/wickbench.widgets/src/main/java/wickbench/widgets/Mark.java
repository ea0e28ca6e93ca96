package wickbench.widgets;

import wickbench.api.reading.Outcome;
import wickbench.api.reading.Severity;

/** A word with the shape and the colour that go with it. */
public record Mark(String word, Shape shape, Meaning meaning) {

    /** Returns how an outcome is marked everywhere in the house; the word says no more than the strip does. */
    public static Mark of(Outcome outcome) {
        String word = WidgetWords.get("outcome." + outcome.code());
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
