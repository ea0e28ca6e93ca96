package wickbench.figures.sampling;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * The chance that a random sample of a lot finds no faulty item.
 *
 * @param items all items of the lot
 * @param faulty the faulty ones among them
 */
record LotMisses(int items, int faulty) {

    /** Returns the smallest sample that contains no faulty item with at most the chance {@code allowed}. */
    int smallest(BigDecimal allowed) {
        // one more than the good items always contains a faulty one
        int sure = items - faulty + 1;
        int enough = 1;
        while (enough < sure && !meets(enough, allowed)) {
            enough = (int) Math.min(sure, 2L * enough);
        }
        int tooFew = enough / 2;
        while (enough - tooFew > 1) {
            int middle = (enough + tooFew) / 2;
            if (meets(middle, allowed)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return enough;
    }

    /** Returns the chance that {@code n} items, each faulty one seen with the chance {@code seen}, show nothing. */
    double chance(int n, double seen) {
        return new Hypergeometric(items, faulty, n).mean(j -> Math.pow(1 - seen, j));
    }

    /** Compares Π (N − D − i)/(N − i) over i &lt; n, or the equal product over i &lt; D, exactly; the shorter one. */
    private boolean meets(int n, BigDecimal allowed) {
        if (n > items - faulty) {
            return true;
        }
        int factors = Math.min(n, faulty);
        BigInteger above = falling(items - Math.max(n, faulty), factors);
        BigInteger below = falling(items, factors);
        return new BigDecimal(above).compareTo(allowed.multiply(new BigDecimal(below))) <= 0;
    }

    /** Multiplies {@code count} whole numbers downwards from {@code top}, halves first, which keeps the factors alike in size. */
    private static BigInteger falling(int top, int count) {
        if (count <= 16) {
            BigInteger product = BigInteger.ONE;
            for (int i = 0; i < count; i++) {
                product = product.multiply(BigInteger.valueOf(top - i));
            }
            return product;
        }
        int half = count / 2;
        return falling(top, half).multiply(falling(top - half, count - half));
    }
}
