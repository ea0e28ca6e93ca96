package wickbench.figures.sampling;

import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.proportion.Interval;

/**
 * How many sub-samples are positive, judged from pools of equal size that were tested once each.
 *
 * @param positive the positive pools, 0 to {@code pools}
 * @param pools the pools tested, at least 1
 * @param size the sub-samples of a pool, at least 1
 */
public record PooledShare(long positive, long pools, long size) {
    public PooledShare {
        Inputs.size("pools", pools);
        Inputs.part("positive", positive, "pools", pools);
        Inputs.size("size", size);
    }

    /** Returns p̂ = 1 − (1 − x/m)^(1/k), with the score limits of x/m brought over the same way. */
    public Limits limits(double level) {
        Limits ofPools = Interval.WILSON.of(positive, pools, level);
        return new Limits(ofOne(ofPools.estimate()), ofOne(ofPools.lower()), ofOne(ofPools.upper()));
    }

    private double ofOne(double ofPool) {
        return ofPool == 1 ? 1 : -Math.expm1(Math.log1p(-ofPool) / size);
    }
}
