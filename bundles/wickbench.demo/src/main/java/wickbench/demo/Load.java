package wickbench.demo;

/**
 * How much allergen a strip meets.
 *
 * @param tenfolds common logarithm of the amount, counted in limits of the method: 0 is the limit, 1 ten times as much
 */
record Load(double tenfolds) {
    /** So little that no strip tells it from nothing. */
    static final Load NONE = new Load(-9);

    Load thinned(int times) {
        return new Load(tenfolds - StrictMath.log10(times));
    }
}
