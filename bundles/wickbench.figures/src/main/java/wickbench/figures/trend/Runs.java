package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;
import wickbench.figures.distribution.Binomial;

/**
 * The longest run on one side of the centre and the crossings of it; points on the centre are left out.
 *
 * <p>With n useful points a run may be as long as round(log₂ n) + 3, and the crossings are at least the 5 % quantile of the binomial
 * law with n − 1 trials and chance ½. Source: Anhøj &amp; Olesen, PLoS ONE 9:e113825 (2014).
 *
 * @param useful the points that do not lie on the centre
 * @param longest the longest run
 * @param longestAllowed a longer one is a signal
 * @param crossings how often the points change sides
 * @param fewestAllowed fewer are a signal
 */
public record Runs(int useful, int longest, int longestAllowed, int crossings, int fewestAllowed) {
    private static final double QUANTILE = 0.05;

    /** Looks at values in the order of time. */
    public static Runs of(List<Double> values, double centre) {
        int useful = 0;
        int crossings = 0;
        int run = 0;
        int longest = 0;
        int side = 0;
        for (double value : values) {
            int now = (int) Math.signum(value - centre);
            if (now != 0) {
                useful++;
                crossings += side * now < 0 ? 1 : 0;
                run = now == side ? run + 1 : 1;
                longest = Math.max(longest, run);
                side = now;
            }
        }
        return new Runs(useful, longest, longestAllowed(useful), crossings, fewestAllowed(useful));
    }

    /** Returns round(log₂ n) + 3; 0 points may do anything. */
    public static int longestAllowed(int useful) {
        return useful == 0 ? 0 : (int) Math.rint(Math.log(useful) / Math.log(2)) + 3;
    }

    /** Returns the smallest k for which at most k of n − 1 fair coins have a chance of at least 5 %. */
    public static int fewestAllowed(int useful) {
        return useful < 2 ? 0 : (int) new Binomial(useful - 1L, 0.5).quantile(QUANTILE);
    }

    List<Signal> signals() {
        List<Signal> found = new ArrayList<>(2);
        if (longest > longestAllowed) {
            found.add(new Signal(Signal.Kind.LONG_RUN, 0, longest, longestAllowed));
        }
        if (crossings < fewestAllowed) {
            found.add(new Signal(Signal.Kind.FEW_CROSSINGS, 0, crossings, fewestAllowed));
        }
        return found;
    }
}
