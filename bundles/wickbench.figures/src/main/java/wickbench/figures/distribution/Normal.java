package wickbench.figures.distribution;

import wickbench.figures.Inputs;

/**
 * The standard normal distribution.
 *
 * <p>Rational approximations of W. J. Cody (Math. Comp. 23:631, 1969), relative error below 3e-16 in each tail.
 */
public final class Normal {
    private static final double CENTRAL = 0.67448975;
    private static final double FAR = Math.sqrt(32);
    private static final double ONE_OVER_SQRT_2PI = 0.3989422804014326779;

    private static final double[] A = {
        2.2352520354606839287,
        161.02823106855587881,
        1067.6894854603709582,
        18154.981253343561249,
        .065682337918207449113
    };
    private static final double[] B = {
        47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956
    };
    private static final double[] C = {
        .39894151208813466764,
        8.8831497943883759412,
        93.506656132177855979,
        597.27027639480026226,
        2494.5375852903726711,
        6848.1904505362823326,
        11602.651437647350124,
        9842.7148383839780218,
        1.0765576773720192317e-8
    };
    private static final double[] D = {
        22.266688044328115691,
        235.38790178262499861,
        1519.377599407554805,
        6485.558298266760755,
        18615.571640885098091,
        34900.952721145977266,
        38912.003286093271411,
        19685.429676859990727
    };
    private static final double[] P = {
        .21589853405795699,
        .1274011611602473639,
        .022235277870649807,
        .001421619193227893466,
        2.9112874951168792e-5,
        .02307344176494017303
    };
    private static final double[] Q = {
        1.28426009614491121, .468238212480865118, .0659881378689285515, .00378239633202758244, 7.29751555083966205e-5
    };

    private Normal() {}

    /** Returns P(Z ≤ z). */
    public static double below(double z) {
        return above(-z);
    }

    /** Returns P(Z &gt; z), with all its digits however small it is. */
    public static double above(double z) {
        double y = Math.abs(z);
        if (y <= CENTRAL) {
            return 0.5 - middle(z);
        }
        double tail = scaledTail(y) * bell(y);
        return z > 0 ? tail : 1 - tail;
    }

    /** Returns ln P(Z &gt; z), also where the tail itself is smaller than any double. */
    public static double logAbove(double z) {
        return z <= CENTRAL ? Math.log1p(-below(z)) : Math.log(scaledTail(z)) - z * z / 2;
    }

    /** Returns the density at z. */
    public static double density(double z) {
        return ONE_OVER_SQRT_2PI * bell(z);
    }

    /**
     * Returns z with P(Z ≤ z) = p.
     *
     * @param p between 0 and 1, both excluded
     */
    public static double quantile(double p) {
        Inputs.level("p", p);
        double half = p - 0.5;
        if (Math.abs(half) < 0.25) {
            return central(half);
        }
        return half < 0 ? -upper(p) : upper(1 - p);
    }

    /** Returns the two-sided critical value of a confidence level: 1.959964 for 0.95. */
    public static double twoSided(double level) {
        Inputs.level("level", level);
        return upper((1 - level) / 2);
    }

    /** Newton on the distance from the middle, which keeps its digits near 0. */
    private static double central(double half) {
        double z = half / ONE_OVER_SQRT_2PI;
        for (int i = 0; i < 5; i++) {
            z += (half - middle(z)) / density(z);
        }
        return z;
    }

    /** Newton on the logarithm of the upper tail, from the approximation 26.2.23 of Abramowitz and Stegun. */
    private static double upper(double tail) {
        if (tail > 0.25) {
            return central(0.5 - tail);
        }
        double logTail = Math.log(tail);
        double t = Math.sqrt(-2 * logTail);
        double z =
                t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
        for (int i = 0; i < 3; i++) {
            double scaled = scaledTail(z);
            z += (Math.log(scaled) - z * z / 2 - logTail) * scaled / ONE_OVER_SQRT_2PI;
        }
        return z;
    }

    /** P(0 &lt; Z ≤ z) for small z. */
    private static double middle(double z) {
        if (Math.abs(z) > CENTRAL) {
            return Math.copySign(0.5 - scaledTail(Math.abs(z)) * bell(z), z);
        }
        double square = z * z;
        double above = A[4] * square;
        double under = square;
        for (int i = 0; i < 3; i++) {
            above = (above + A[i]) * square;
            under = (under + B[i]) * square;
        }
        return z * (above + A[3]) / (under + B[3]);
    }

    /** The upper tail divided by exp(−y²/2). */
    private static double scaledTail(double y) {
        return y <= FAR ? nearTail(y) : farTail(y);
    }

    private static double nearTail(double y) {
        double above = C[8] * y;
        double under = y;
        for (int i = 0; i < 7; i++) {
            above = (above + C[i]) * y;
            under = (under + D[i]) * y;
        }
        return (above + C[7]) / (under + D[7]);
    }

    private static double farTail(double y) {
        double square = 1 / (y * y);
        double above = P[5] * square;
        double under = square;
        for (int i = 0; i < 4; i++) {
            above = (above + P[i]) * square;
            under = (under + Q[i]) * square;
        }
        return (ONE_OVER_SQRT_2PI - square * (above + P[4]) / (under + Q[4])) / y;
    }

    /** exp(−z²/2), the square taken without rounding. */
    private static double bell(double z) {
        double square = z * z;
        double rest = Math.fma(z, z, -square);
        return Math.exp(-square / 2) * (1 - rest / 2);
    }
}
