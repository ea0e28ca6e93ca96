package wickbench.api.method;

import wickbench.api.words.Coded;

/** How the sample was taken; dry and wet speak of the surface. */
public enum Route implements Coded {
    RINSE,
    SWAB_DRY,
    SWAB_WET,
    FOOD_SOLID,
    FOOD_LIQUID;

    public boolean swab() {
        return this == SWAB_DRY || this == SWAB_WET;
    }

    public boolean food() {
        return this == FOOD_SOLID || this == FOOD_LIQUID;
    }
}
