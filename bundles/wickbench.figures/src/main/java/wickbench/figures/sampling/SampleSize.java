package wickbench.figures.sampling;

/** How many samples a search takes, or that no number of them is enough. */
public sealed interface SampleSize {

    /**
     * So many are enough.
     *
     * @param n the number of samples
     * @param reached the chance that they find at least one faulty item, when the share is as bad as stated
     */
    record Enough(int n, double reached) implements SampleSize {}

    /**
     * Testing every item of the lot still falls short, because the test misses too often.
     *
     * @param best the chance that is reached when all are tested
     */
    record NoneIsEnough(double best) implements SampleSize {}
}
