package wickbench.figures.trend;

import wickbench.api.words.Coded;

/**
 * Something that chance alone rarely does.
 *
 * @param kind what happened
 * @param point the point at which it showed; 0 when the whole series shows it
 * @param measured what was found: the value, the length of the run, the number of crossings, the sum
 * @param limit what it was held against
 */
public record Signal(Kind kind, int point, double measured, double limit) {

    /** What a chart can say. */
    public enum Kind implements Coded {
        /** The value lies above its upper limit. */
        ABOVE_LIMIT,
        /** The value lies below its lower limit. */
        BELOW_LIMIT,
        /** Too many points in a row lie on one side of the centre. */
        LONG_RUN,
        /** The points cross the centre too seldom. */
        FEW_CROSSINGS,
        /** The sum upwards has passed the decision interval. */
        SUM_HIGH,
        /** The sum downwards has passed the decision interval. */
        SUM_LOW,
        /** Three events in a row with nothing between them. */
        NO_GAPS
    }
}
