package wickbench.figures;

/** What inputs must be; each check returns its value or ends with {@link NoAnswer}. */
public final class Inputs {
    /** Counts above this are not exact as doubles once multiplied. */
    public static final long LARGEST_COUNT = 1_000_000_000L;

    private Inputs() {}

    /** Asks for a whole number from 0 to {@value #LARGEST_COUNT}. */
    public static long count(String field, long value) {
        if (value < 0 || value > LARGEST_COUNT) {
            throw NoAnswer.of(field, "count.expected", LARGEST_COUNT, value);
        }
        return value;
    }

    /** Asks for a whole number from 1 to {@value #LARGEST_COUNT}. */
    public static long size(String field, long value) {
        if (value < 1 || value > LARGEST_COUNT) {
            throw NoAnswer.of(field, "size.expected", LARGEST_COUNT, value);
        }
        return value;
    }

    /** Asks for a count that is at most its total. */
    public static long part(String field, long value, String ofField, long total) {
        count(field, value);
        if (value > total) {
            throw NoAnswer.of(field, "part.above-total", value, ofField, total);
        }
        return value;
    }

    /** Asks for a level between 0 and 1, both excluded. */
    public static double level(String field, double value) {
        if (!(value > 0 && value < 1)) {
            throw NoAnswer.of(field, "level.expected", value);
        }
        return value;
    }

    /** Asks for a probability from 0 to 1. */
    public static double probability(String field, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw NoAnswer.of(field, "probability.expected", value);
        }
        return value;
    }

    /** Asks for a number that is neither infinite nor undefined. */
    public static double finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw NoAnswer.of(field, "number.expected", value);
        }
        return value;
    }

    /** Asks for a finite number above 0. */
    public static double positive(String field, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw NoAnswer.of(field, "positive.expected", value);
        }
        return value;
    }

    /** Asks for a finite number from 0 on. */
    public static double notNegative(String field, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw NoAnswer.of(field, "not-negative.expected", value);
        }
        return value;
    }

    /** Asks for a number in a range, both ends allowed. */
    public static double within(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw NoAnswer.of(field, "range.expected", plain(least), plain(most), plain(value));
        }
        return value;
    }

    /** Asks for a whole number in a range, both ends allowed. */
    public static int whole(String field, int value, int least, int most) {
        if (value < least || value > most) {
            throw NoAnswer.of(field, "whole.expected", least, most, value);
        }
        return value;
    }

    private static String plain(double value) {
        return value == (long) value ? Long.toString((long) value) : Double.toString(value);
    }
}
