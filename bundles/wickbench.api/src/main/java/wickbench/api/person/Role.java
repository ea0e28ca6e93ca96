package wickbench.api.person;

import wickbench.api.words.Coded;

/** What a person may do; none implies another. */
public enum Role implements Coded {
    OPERATOR,
    TRAINER,
    STOCK_KEEPER,
    REVIEWER,
    RELEASER,
    ADMINISTRATOR
}
