package wickbench.api.reading;

import java.util.List;
import wickbench.api.gate.Answer;
import wickbench.api.words.Coded;

/**
 * What one gate says of a strip that is to be started.
 *
 * @param neighbour who was asked: {@code method}, {@code stock}, {@code training}, …
 * @param reasons what speaks against it, or what is to be minded
 */
public record Clearance(String neighbour, State state, List<Answer.Reason> reasons) {
    public Clearance {
        reasons = List.copyOf(reasons);
    }

    /** How a gate stands. */
    public enum State implements Coded {
        CLEARED,
        /** It may be started; something is to be minded. */
        CAUTION,
        /** It may not be started. */
        REFUSED,
        /** Nobody is there to ask, and the site does not insist. */
        NOT_CHECKED
    }
}
