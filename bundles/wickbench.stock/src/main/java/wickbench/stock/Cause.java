package wickbench.stock;

import wickbench.api.words.Coded;

/** Why a lot stands in quarantine. */
public enum Cause implements Coded {
    /** Warmer than its range for longer than is allowed. */
    WARM,
    /** Colder than its range for longer than is allowed. */
    COLD,
    /** At or below 0 °C, however short. */
    FROZEN,
    /** No reading for longer than is allowed. */
    GAP,
    /** The thermometer did not move, so it shows nothing. */
    STUCK,
    /** Somebody's own reason. */
    STATED;

    /** Tells whether it is about how the lot was kept. */
    public boolean storage() {
        return this != STATED;
    }
}
