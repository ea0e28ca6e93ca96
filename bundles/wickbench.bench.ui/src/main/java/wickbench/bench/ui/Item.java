package wickbench.bench.ui;

import wickbench.api.words.Coded;

/** What is asked of one strip beside its lines, in the order in which people fill it in. */
enum Item implements Coded {
    METHOD(true),
    OPERATOR(true),
    LOT(true),
    SAMPLE(true),
    LINE(false),
    PLACE(true),
    REASON(false),
    REASON_TEXT(false),
    BATCH(false),
    VISUAL(false),
    DILUTION(false),
    AREA(false),
    CONTROL(false),
    OUT_OF_FRIDGE(false),
    EXTRACTED(false),
    SHAKEN(false),
    CLEAN(false),
    CLEANED_BY(false),
    CLEANED_AT(false),
    OBSERVER(false);

    private final boolean asked;

    Item(boolean asked) {
        this.asked = asked;
    }

    /** Tells whether a strip cannot be recorded at the bench without it. */
    boolean asked() {
        return asked;
    }

    /** Returns its label. */
    String words() {
        return BenchUiWords.get("item." + code());
    }
}
