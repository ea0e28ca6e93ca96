package wickbench.training;

import wickbench.api.reading.Outcome;
import wickbench.training.ReaderScore.Topic;

/**
 * A strip of a round whose key is opened, and what is right to call of it.
 *
 * @param item its name in the panel
 */
public record Truth(String item, StripClass kind, Outcome expected) {

    /** Returns among what it is counted. */
    public Topic topic() {
        return switch (kind) {
            case INVALID -> Topic.INVALID;
            case CLEAR, HOOK -> Topic.CLEAR;
            case BLANK -> Topic.WITHOUT;
            case NEAR_LIMIT -> expected.positive() ? Topic.NEAR : Topic.WITHOUT;
        };
    }

    /** Tells whether a call was right: a near or clear positive may also be called above range, on the side of more. */
    public boolean right(Outcome called) {
        return expected == Outcome.POSITIVE ? called.positive() : called == expected;
    }
}
