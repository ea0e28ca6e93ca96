package wickbench.plant.product;

import wickbench.api.words.Coded;

/** The form in which an allergen comes; the harder to get off come later. */
public enum Form implements Coded {
    LIQUID,
    POWDER,
    PASTE,
    /** Pieces, which lie here and not there: a swab beside them finds nothing. */
    PARTICULATE
}
