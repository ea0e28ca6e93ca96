package wickbench.figures.sampling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * A search that accepts only if all samples are clean: how many must be taken to find a stated share of faulty items.
 *
 * <p>Numbers are taken as the decimals they were written as, so that 5 % of 100 items are 5 and a chance that is met exactly
 * counts as met. Source: the binomial and hypergeometric zero-acceptance plans, common textbook matter; finite lots as in Cannon
 * &amp; Roe, <em>Livestock disease surveys</em> (1982).
 *
 * @param prevalence the share of faulty items to be found, from 1e-9 to 1
 * @param confidence the chance to find at least one, between 0 and 1, neither allowed
 * @param sensitivity the chance that one faulty item is seen as faulty, above 0, at most 1
 */
public record ZeroFailure(double prevalence, double confidence, double sensitivity) {
    private static final double RAREST = 1e-9;
    private static final int LARGEST_LOT = 10_000_000;

    public ZeroFailure {
        Inputs.within("prevalence", prevalence, RAREST, 1);
        Inputs.level("confidence", confidence);
        Inputs.within("sensitivity", sensitivity, RAREST, 1);
        if (prevalence * sensitivity < RAREST) {
            throw NoAnswer.of("prevalence", "prevalence.too-rare");
        }
    }

    /** Searches with a test that misses nothing. */
    public static ZeroFailure perfect(double prevalence, double confidence) {
        return new ZeroFailure(prevalence, confidence, 1);
    }

    /** Returns n = ⌈ln(1 − C) / ln(1 − p·Se)⌉, for a lot that is large against n. */
    public SampleSize.Enough anyLot() {
        BigDecimal clean = BigDecimal.ONE.subtract(decimal(prevalence).multiply(decimal(sensitivity)));
        double logClean = Math.log1p(-prevalence * sensitivity);
        int n = Misses.smallest(clean, allowed(), Math.log(allowed().doubleValue()) / logClean);
        return new SampleSize.Enough(n, found(n));
    }

    /** Returns 1 − (1 − p·Se)ⁿ, the chance that n samples of a large lot find at least one faulty item. */
    public double found(double n) {
        Inputs.notNegative("n", n);
        return n == 0 ? 0 : -Math.expm1(n * Math.log1p(-prevalence * sensitivity));
    }

    /**
     * Returns the number for a lot of {@code items}, of which D = ⌈p·N⌉ are faulty.
     *
     * <p>A test that misses nothing: the smallest n whose hypergeometric chance of no faulty item is at most 1 − C, exactly. One
     * that misses: n = ⌈(N/Se)(1 − (1 − C)^(1/D))⌉, which treats the faulty items as found independently and so never asks for too
     * few.
     *
     * @param items the size of the lot, 1 to 10 million
     */
    public SampleSize lot(int items) {
        Inputs.whole("lot", items, 1, LARGEST_LOT);
        int faulty = faulty(items);
        LotMisses lot = new LotMisses(items, faulty);
        return sensitivity == 1 ? enough(lot, lot.smallest(allowed())) : independent(lot);
    }

    /** Returns D = ⌈p·N⌉, the faulty items of a lot that is as bad as stated. */
    public int faulty(int items) {
        return decimal(prevalence)
                .multiply(BigDecimal.valueOf(items))
                .setScale(0, RoundingMode.CEILING)
                .intValueExact();
    }

    /**
     * Returns (1 − (1 − C)^(1/D))(N − (D − 1)/2), the approximation of Cannon &amp; Roe (1982) for a test that misses nothing; not
     * rounded.
     */
    public double approximateLot(int items) {
        int faulty = faulty(Inputs.whole("lot", items, 1, LARGEST_LOT));
        return share(faulty) * (items - (faulty - 1) / 2.0);
    }

    private SampleSize independent(LotMisses lot) {
        double n = Math.ceil(lot.items() / sensitivity * share(lot.faulty()));
        return n <= lot.items()
                ? enough(lot, (int) n)
                : new SampleSize.NoneIsEnough(-Math.expm1(lot.faulty() * Math.log1p(-sensitivity)));
    }

    private SampleSize enough(LotMisses lot, int n) {
        return new SampleSize.Enough(n, 1 - lot.chance(n, sensitivity));
    }

    private double share(int faulty) {
        return -Math.expm1(Math.log(allowed().doubleValue()) / faulty);
    }

    private BigDecimal allowed() {
        return BigDecimal.ONE.subtract(decimal(confidence));
    }

    private static BigDecimal decimal(double value) {
        return BigDecimal.valueOf(value);
    }
}
