package wickbench.ledger.ui;

import wickbench.api.words.Coded;

/** By what results can be narrowed down, beside the words in the table's own filter. */
enum FilterItem implements Coded {
    FROM,
    TO,
    OUTCOME,
    METHOD,
    PLACE,
    LINE,
    BATCH;

    String words() {
        return LedgerUiWords.get("filter." + code());
    }
}
