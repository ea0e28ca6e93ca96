package wickbench.figures.sampling;

import wickbench.figures.Inputs;
import wickbench.figures.distribution.Binomial;

/**
 * A single sampling plan by attributes: of {@code n} random items at most {@code accept} may be faulty.
 *
 * <p>Sources: NIST/SEMATECH e-Handbook of Statistical Methods §6.2.3; Montgomery, <em>Introduction to Statistical Quality
 * Control</em>, chapter 15.
 *
 * @param n the items taken, 1 to 1 million
 * @param accept the most faulty ones with which a lot is still accepted; less than {@code n}, for a plan that refuses nothing decides
 *     nothing
 */
public record Plan(int n, int accept) {
    private static final int LARGEST = 1_000_000;

    public Plan {
        Inputs.whole("n", n, 1, LARGEST);
        Inputs.whole("accept", accept, 0, n - 1);
    }

    /** Returns Pa = Σ C(n,i) pⁱ (1 − p)ⁿ⁻ⁱ over i ≤ c: the chance that a process with the share {@code p} of faulty items passes. */
    public double acceptance(double p) {
        Inputs.probability("share", p);
        return new Binomial(n, p).atMost(accept);
    }

    /**
     * Returns the hypergeometric chance that one lot with exactly so many faulty items passes (type A).
     *
     * @param items the lot, at least {@code n}
     * @param faulty 0 to {@code items}
     */
    public double acceptanceOfLot(int items, int faulty) {
        lot(items);
        Inputs.whole("faulty", faulty, 0, items);
        return new Hypergeometric(items, faulty, n).mean(j -> j <= accept ? 1 : 0);
    }

    /** Returns the share of faulty items that passes with the chance {@code chance}: .95 gives p95, .10 gives p10. */
    public double shareAccepted(double chance) {
        Inputs.level("chance", chance);
        return Falling.crossing(this::acceptance, chance, 0, 1);
    }

    /** Returns AOQ = Pa·p·(N − n)/N: the share that leaves when refused lots of N items are sorted out and faulty items replaced. */
    public double outgoing(double p, int items) {
        return acceptance(p) * p * unsampled(items);
    }

    /** Returns AOQ = Pa·p for lots that are large against the sample. */
    public double outgoing(double p) {
        return acceptance(p) * p;
    }

    /** Returns the worst outgoing share for lots of {@code items}. */
    public OutgoingLimit outgoingLimit(int items) {
        double worst = worst();
        return new OutgoingLimit(outgoing(worst, items), worst);
    }

    /** Returns the worst outgoing share for lots that are large against the sample. */
    public OutgoingLimit outgoingLimit() {
        double worst = worst();
        return new OutgoingLimit(outgoing(worst), worst);
    }

    /** Returns ATI = n + (1 − Pa)(N − n): how many items of a lot are looked at on average when refused lots are sorted out. */
    public double inspected(double p, int items) {
        return n + (1 - acceptance(p)) * (lot(items) - n);
    }

    /** Solves d(p·Pa)/dp = Pa − (c + 1)·b(c + 1; n, p) = 0, which falls through zero once. */
    private double worst() {
        return Falling.crossing(
                p -> acceptance(p) - (accept + 1) * new Binomial(n, p).mass(accept + 1L),
                0,
                Double.MIN_NORMAL,
                1 - Math.ulp(1.0));
    }

    private double unsampled(int items) {
        return (lot(items) - n) / (double) items;
    }

    private int lot(int items) {
        return Inputs.whole("lot", items, n, Integer.MAX_VALUE);
    }
}
