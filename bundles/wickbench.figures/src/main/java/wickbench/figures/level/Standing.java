package wickbench.figures.level;

/** How a result stands against an action level. It never releases food by itself. */
public enum Standing {
    /** Whatever the content is within its range, it is less than the level. */
    BELOW,
    /** Whatever the content is within its range, it reaches the level. */
    AT_OR_ABOVE,
    /** The range holds the level: this method cannot tell, for example because its limit lies above the level. */
    CANNOT_TELL,
    /** The result is not of the food; state the carry-over first. */
    NOT_COMPARABLE;

    public static Standing of(Found found, ActionLevel level) {
        if (!(found instanceof Found.InRange range)) {
            return NOT_COMPARABLE;
        }
        if (range.from().compareTo(level.mgPerKg()) >= 0) {
            return AT_OR_ABOVE;
        }
        boolean less = range.below()
                .filter(below -> below.compareTo(level.mgPerKg()) <= 0)
                .isPresent();
        return less ? BELOW : CANNOT_TELL;
    }
}
