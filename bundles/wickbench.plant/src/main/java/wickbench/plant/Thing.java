package wickbench.plant;

import wickbench.api.words.Coded;

/** What is stated of a plant, by its sort. */
public enum Thing implements Coded {
    LINE,
    POINT,
    PRODUCT,
    CLEAN,
    RULE
}
