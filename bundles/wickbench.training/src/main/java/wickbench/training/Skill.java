package wickbench.training;

/**
 * How well a reader reads, as chances from 0 to 1.
 *
 * @param near of calling a faint line that is there
 * @param clear of calling a clear positive, or a lost hook line
 * @param alarm of calling a line that is not there
 * @param invalid of calling an invalid strip invalid
 */
public record Skill(double near, double clear, double alarm, double invalid) {
    /** Who should pass: common practice, no published source. */
    public static final Skill GOOD = new Skill(0.95, 0.999, 0.01, 0.99);

    /** Who should not: overlooks four in ten faint lines; common practice, no published source. */
    public static final Skill POOR = new Skill(0.6, 0.98, 0.05, 0.9);

    public Skill {
        check(near);
        check(clear);
        check(alarm);
        check(invalid);
    }

    public Skill withNear(double other) {
        return new Skill(other, clear, alarm, invalid);
    }

    private static void check(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("expected a chance from 0 to 1, found " + chance);
        }
    }
}
