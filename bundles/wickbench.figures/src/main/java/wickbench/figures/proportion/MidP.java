package wickbench.figures.proportion;

import wickbench.figures.distribution.Binomial;
import wickbench.figures.distribution.BinomialLimits;

/** The chance at which a tail that counts x itself by half has a given probability. */
final class MidP {
    private static final int MOST_STEPS = 200;

    private MidP() {}

    static double lower(long x, long n, double tail) {
        if (x == 0) {
            return 0;
        }
        double exact = BinomialLimits.lower(x, n, tail);
        // counting x half lets the limit move in, towards x/n; at half the tail the whole of x lies outside
        return root(x, n, Math.log(tail), exact, BinomialLimits.lower(x, n, Math.min(2 * tail, 0.999)), true);
    }

    static double upper(long x, long n, double tail) {
        if (x == n) {
            return 1;
        }
        double exact = BinomialLimits.upper(x, n, tail);
        return root(x, n, Math.log(tail), BinomialLimits.upper(x, n, Math.min(2 * tail, 0.999)), exact, false);
    }

    /** Newton on the logarithm of the tail, kept between two sides. */
    private static double root(long x, long n, double logTail, double from, double to, boolean rising) {
        double low = from;
        double high = to;
        double p = (low + high) / 2;
        for (int i = 0; i < MOST_STEPS; i++) {
            Binomial at = new Binomial(n, p);
            double mass = at.mass(x);
            double tail = (rising ? at.above(x) : at.atMost(x - 1)) + mass / 2;
            double missing = logTail - Math.log(tail);
            low = missing > 0 == rising ? p : low;
            high = missing > 0 == rising ? high : p;
            double slope = mass / 2 * (x / p + (n - x) / (1 - p)) / tail;
            double next = p + (rising ? missing : -missing) / slope;
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - p) <= Math.ulp(p)) {
                return next;
            }
            p = next;
        }
        return p;
    }
}
