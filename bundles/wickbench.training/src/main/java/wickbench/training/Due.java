package wickbench.training;

import java.time.LocalDate;
import wickbench.api.words.Coded;

/**
 * Something that somebody must see to.
 *
 * @param day by when, or since when
 * @param person whom it concerns, by id; empty where nobody in particular
 * @param about the method, the round or the bench
 */
public record Due(What what, LocalDate day, String person, String about) {

    /** What is to be done, most urgent first. */
    public enum What implements Coded {
        SUSPENDED,
        SETTLE,
        LAPSED,
        ACKNOWLEDGE,
        /** Somebody has not called every strip of an open round. */
        CALL,
        SCORE,
        SIGN,
        RENEW,
        TEST,
        LIGHT
    }
}
