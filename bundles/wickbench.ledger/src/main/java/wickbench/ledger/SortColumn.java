package wickbench.ledger;

import wickbench.api.words.Coded;

/** What results can be sorted by; equal ones follow in the order in which they happened. */
public enum SortColumn implements Coded {
    /** When the strip was started; where that is not stated, when it was read; else when it was recorded. */
    HAPPENED,
    SAMPLE,
    PLACE,
    LINE,
    BATCH,
    METHOD,
    TARGET,
    LOT,
    OPERATOR,
    /** In the order that the site profile tells. */
    OUTCOME
}
