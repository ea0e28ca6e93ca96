package wickbench.stock.ui;

import wickbench.api.words.Coded;

/** The parts of the page. */
enum Tab implements Coded {
    LOTS,
    FRIDGES,
    OUTLOOK,
    TRACE,
    EQUIPMENT;

    String words() {
        return StockUiWords.get("tab." + code());
    }
}
