package wickbench.api.part;

import wickbench.api.words.Coded;

/** How a set stands in this program. */
public enum Standing implements Coded {
    /** It came with the product and runs. */
    OF_PRODUCT,
    /** It was added to this home and runs. */
    ADDED,
    /** The product holds it, and it does not run here. */
    AT_HAND,
    /** It was added to this home and does not run; the reason is told. */
    REFUSED;

    public boolean runs() {
        return this == OF_PRODUCT || this == ADDED;
    }
}
