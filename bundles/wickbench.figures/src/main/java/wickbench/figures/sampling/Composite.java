package wickbench.figures.sampling;

import java.math.BigDecimal;
import wickbench.figures.Inputs;

/**
 * A pool of equal sub-samples that is tested once; one positive in it is diluted by the others.
 *
 * @param size the sub-samples, 1 to 1 million
 */
public record Composite(int size) {
    private static final int LARGEST = 1_000_000;
    private static final Composite ALONE = new Composite(1);

    public Composite {
        Inputs.whole("composite", size, 1, LARGEST);
    }

    /** Returns 1 − (1 − p)^k: the chance that at least one sub-sample is positive when a share {@code p} is. */
    public double contains(double p) {
        return p == 1 ? 1 : -Math.expm1(size * Math.log1p(-Inputs.probability("share", p)));
    }

    /** Returns what is left of the concentration of one positive among otherwise clean sub-samples. */
    public double diluted(double concentration) {
        return Inputs.notNegative("concentration", concentration) / size;
    }

    /**
     * Returns ⌊C/LOD⌋, the most sub-samples in which one positive is still at the limit of detection; 0 when it is below it even
     * alone. Both in the same unit, taken as the decimals they were written as.
     */
    public static int largest(double concentration, double limit) {
        Inputs.notNegative("concentration", concentration);
        Inputs.positive("limit", limit);
        return BigDecimal.valueOf(concentration)
                .divideToIntegralValue(BigDecimal.valueOf(limit))
                .min(BigDecimal.valueOf(LARGEST))
                .intValueExact();
    }

    /**
     * Returns E = 1/k + 1 − (1 − p)^k, the tests an item takes when a positive pool is tested item by item; 1 for a pool of one.
     * Source: Dorfman, Ann. Math. Stat. 14:436 (1943).
     */
    public double testsPerItem(double p) {
        return size == 1 ? 1 : 1.0 / size + contains(p);
    }

    /** Returns the pool that takes the fewest tests an item; a pool of one when pooling saves nothing. */
    public static Composite cheapest(double p) {
        Inputs.within("share", p, 1e-9, 1);
        // the optimum lies near 1/√p + 1
        int most = (int) Math.ceil(2 / Math.sqrt(p)) + 2;
        Composite best = ALONE;
        for (int k = 2; k <= most; k++) {
            Composite pool = new Composite(k);
            best = pool.testsPerItem(p) < best.testsPerItem(p) ? pool : best;
        }
        return best;
    }
}
