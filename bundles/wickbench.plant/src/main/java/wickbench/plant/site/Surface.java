package wickbench.plant.site;

import wickbench.api.words.Coded;

/** What is sampled at a point. */
public enum Surface implements Coded {
    STAINLESS_STEEL,
    PAINTED_STEEL,
    ALUMINIUM,
    PLASTIC,
    RUBBER,
    FABRIC,
    GLASS,
    WOOD,
    /** The last rinse of what cannot be reached. */
    RINSE_WATER,
    /** The first of the product that follows, or what was pushed through. */
    PRODUCT,
    OTHER
}
