package wickbench.plant.ui;

import wickbench.api.words.Coded;

/** The parts of the page. */
enum Tab implements Coded {
    DUE,
    ORDER,
    CHANGES,
    PICTURE,
    CLEANS,
    PRODUCTS;

    String words() {
        return PlantUiWords.get("tab." + code());
    }
}
