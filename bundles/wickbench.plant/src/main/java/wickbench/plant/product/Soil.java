package wickbench.plant.product;

import wickbench.api.words.Coded;

/** How a product sticks to the line; the harder to clean come later. */
public enum Soil implements Coded {
    LIGHT,
    STICKY,
    BAKED_ON
}
