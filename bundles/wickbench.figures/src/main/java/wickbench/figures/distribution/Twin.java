package wickbench.figures.distribution;

/**
 * A number kept as the sum of two doubles, about 32 digits (Dekker, Numer. Math. 18:224, 1971).
 *
 * <p>For the few sums whose rounding would otherwise cost the last digits of a small tail.
 *
 * @param high the number as a double
 * @param low what the double leaves over
 */
record Twin(double high, double low) {
    private static final Twin LN2 = new Twin(0.6931471805599453, 2.3190468138462996e-17);
    private static final int HALVINGS = 6;
    private static final Twin SIXTH = of(1).over(of(6));

    static Twin of(double value) {
        return new Twin(value, 0);
    }

    /** a + b without rounding. */
    static Twin sum(double a, double b) {
        double sum = a + b;
        double other = sum - a;
        return new Twin(sum, (a - (sum - other)) + (b - other));
    }

    /** a × b without rounding. */
    static Twin product(double a, double b) {
        double product = a * b;
        return new Twin(product, Math.fma(a, b, -product));
    }

    Twin plus(Twin other) {
        Twin top = sum(high, other.high);
        return settled(top.high, top.low + low + other.low);
    }

    Twin minus(Twin other) {
        return plus(new Twin(-other.high, -other.low));
    }

    Twin times(Twin other) {
        Twin top = product(high, other.high);
        return settled(top.high, top.low + high * other.low + low * other.high);
    }

    Twin times(double other) {
        Twin top = product(high, other);
        return settled(top.high, top.low + low * other);
    }

    Twin over(Twin other) {
        double first = high / other.high;
        Twin rest = minus(other.times(first));
        double second = rest.high / other.high;
        return settled(first, second + rest.minus(other.times(second)).high / other.high);
    }

    /** The natural logarithm: one Newton step from that of the double. */
    Twin log() {
        double start = Math.log(high);
        Twin delta = times(exp(-start)).plus(of(-1));
        return of(start).plus(delta.minus(delta.times(delta).times(0.5)));
    }

    /** e to the power of a double. */
    static Twin exp(double power) {
        double twos = Math.rint(power / LN2.high);
        double shrink = Math.scalb(1.0, -HALVINGS);
        Twin rest = of(power).minus(LN2.times(twos)).times(shrink);
        // expm1 by its series; from the fourth power on a double is enough. Then doubled: (1+e)² − 1 = 2e + e²
        Twin square = rest.times(rest);
        double r = rest.high;
        double fourth = square.high * square.high / 24;
        double higher = fourth * (1 + r / 5 * (1 + r / 6 * (1 + r / 7 * (1 + r / 8 * (1 + r / 9)))));
        Twin sum = rest.plus(square.times(0.5))
                .plus(square.times(rest).times(SIXTH))
                .plus(of(higher));
        for (int i = 0; i < HALVINGS; i++) {
            sum = sum.times(2).plus(sum.times(sum));
        }
        Twin whole = sum.plus(of(1));
        int scale = (int) twos;
        return new Twin(Math.scalb(whole.high, scale), Math.scalb(whole.low, scale));
    }

    private static Twin settled(double high, double low) {
        double sum = high + low;
        return new Twin(sum, low - (sum - high));
    }
}
