package wickbench.figures.distribution;

import wickbench.figures.Inputs;

/**
 * The number of successes in n independent trials.
 *
 * @param n trials, at least 1
 * @param p the chance of each, from 0 to 1
 */
public record Binomial(long n, double p) {
    public Binomial {
        Inputs.size("n", n);
        Inputs.probability("p", p);
    }

    /** Returns P(X = k). */
    public double mass(long k) {
        if (k < 0 || k > n) {
            return 0;
        }
        if (p == 0 || p == 1) {
            return k == p * n ? 1 : 0;
        }
        return Mass.binomial(k, n, p, Twin.sum(1, -p)).value();
    }

    /** Returns P(X ≤ k). */
    public double atMost(long k) {
        return isCertain(k) ? certain(k) : tails(k).upper();
    }

    /** Returns P(X &gt; k). */
    public double above(long k) {
        return isCertain(k) ? 1 - certain(k) : tails(k).lower();
    }

    /** Returns ln P(X ≤ k), also where the probability is smaller than any double. */
    public double logAtMost(long k) {
        return isCertain(k) ? Math.log(certain(k)) : tails(k).logUpper();
    }

    /** Returns ln P(X &gt; k). */
    public double logAbove(long k) {
        return isCertain(k) ? Math.log(1 - certain(k)) : tails(k).logLower();
    }

    /** Returns the smallest k with P(X ≤ k) ≥ q. */
    public long quantile(double q) {
        Inputs.probability("q", q);
        long low = -1;
        long high = n;
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (atMost(middle) >= q) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** P(X &gt; k) is the lower tail of a beta distribution at p. */
    private Beta.Tails tails(long k) {
        return new Beta(k + 1, n - k).at(p);
    }

    private boolean isCertain(long k) {
        return k < 0 || k >= n || p == 0 || p == 1;
    }

    private double certain(long k) {
        return k >= n || k >= 0 && p == 0 ? 1 : 0;
    }
}
