package wickbench.widgets;

/**
 * How much there is, as a length.
 *
 * @param share of the whole length, from 0 to 1
 */
public record Bar(double share, Meaning meaning) {
    public Bar {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("expected a share from 0 to 1, found " + share);
        }
    }
}
