package wickbench.drill;

import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.seeing.SeeingGrid;

/**
 * What a drill shows, and when it is over.
 *
 * @param blanks strips without a line in each block of {@link #BLOCK}
 * @param plain strips with a plain line in each block
 * @param least so many strips at least
 * @param most so many at most
 * @param narrow it is over when the upper limit of the threshold is at most so many times the lower
 */
public record DrillPlan(int blanks, int plain, int least, int most, double narrow) {
    /** Strips come in blocks, each with its blanks and plain ones at places drawn by lot. */
    public static final int BLOCK = 8;

    /** Contrast of a plain line, which nobody misses who looks. */
    public static final double PLAIN = 0.20;

    /** The faintest contrast that is shown, and the least that a threshold can be. */
    public static final double FAINTEST = 0.002;

    public static final DrillPlan USUAL = new DrillPlan(2, 1, 40, 96, 1.6);

    private static final int THRESHOLDS = 31;
    private static final int LEVELS = 16;
    private static final double[] SLOPES = {5, 9, 16};
    private static final double[] GUESSES = {0.01, 0.06, 0.20, 0.45};
    private static final double[] LAPSES = {0, 0.04, 0.12};

    public DrillPlan {
        Inputs.whole("blanks", blanks, 1, BLOCK / 2);
        Inputs.whole("plain", plain, 0, BLOCK / 4);
        Inputs.whole("least", least, BLOCK, 400);
        Inputs.whole("most", most, least, 400);
        Inputs.within("narrow", narrow, 1.05, 100);
    }

    /**
     * Returns the readers thought of: all thresholds from {@link #FAINTEST} to {@link #PLAIN} alike, in decimal logarithms of contrast,
     * with several slopes, chances to guess and to lapse.
     */
    SeeingGrid grid() {
        return new SeeingGrid(steps(THRESHOLDS), SLOPES, steps(LEVELS), GUESSES, LAPSES);
    }

    static double[] slopes() {
        return SLOPES.clone();
    }

    static double[] guesses() {
        return GUESSES.clone();
    }

    static double[] lapses() {
        return LAPSES.clone();
    }

    /** Returns how many times the next threshold is as strong as the one before it. */
    static double step() {
        return Math.pow(PLAIN / FAINTEST, 1.0 / (THRESHOLDS - 1));
    }

    private static double[] steps(int count) {
        double low = Math.log10(FAINTEST);
        double step = (Math.log10(PLAIN) - low) / (count - 1);
        return IntStream.range(0, count).mapToDouble(i -> low + i * step).toArray();
    }
}
