package wickbench.widgets;

/**
 * Lengths on the screen, all from one text-size setting.
 *
 * <p>GTK scales by whole numbers only, so 150 % is made here: every length and font goes through this record.
 *
 * @param percent 100 is the design size
 */
public record Metrics(int percent) {
    /** The grid that distances stand on. */
    public static final int UNIT = 8;

    public Metrics {
        if (percent < 50 || percent > 400) {
            throw new IllegalArgumentException("a text size between 50 and 400 percent, not " + percent);
        }
    }

    /** Returns {@code length} design pixels as pixels on the screen. */
    public int px(double length) {
        return (int) Math.round(length * percent / 100);
    }

    /** Returns {@code n} steps of the 8-pixel grid. */
    public int grid(double n) {
        return px(n * UNIT);
    }
}
