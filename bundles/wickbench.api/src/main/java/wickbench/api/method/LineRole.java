package wickbench.api.method;

import wickbench.api.words.Coded;

/** What a line on a strip is for. */
public enum LineRole implements Coded {
    /** Shows that the strip ran. */
    CONTROL,
    /** Immobilised analyte that fades when there is far too much allergen (hook, or high-dose, effect). */
    HOOK,
    /** Shows the allergen; on a competitive strip its absence does. */
    TEST
}
