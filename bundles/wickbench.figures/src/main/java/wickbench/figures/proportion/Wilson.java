package wickbench.figures.proportion;

import wickbench.figures.Limits;
import wickbench.figures.distribution.Normal;

/** The score interval of a proportion (Wilson, J. Am. Stat. Assoc. 22:209, 1927). */
final class Wilson {
    private Wilson() {}

    static Limits limits(long x, long n, double level) {
        double z = Normal.twoSided(level);
        double half = z * Math.sqrt(x * (n - x) / (double) n + z * z / 4);
        double middle = x + z * z / 2;
        double total = n + z * z;
        return new Limits((double) x / n, x == 0 ? 0 : (middle - half) / total, x == n ? 1 : (middle + half) / total);
    }
}
