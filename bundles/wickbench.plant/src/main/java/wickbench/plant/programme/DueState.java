package wickbench.plant.programme;

import wickbench.api.words.Coded;

/** How something due stands. */
public enum DueState implements Coded {
    /** Its time is over, and what was to be tested then has changed or come again. */
    MISSED,
    /** Its time is over, and it can still be done. */
    OVERDUE,
    DUE,
    DONE,
    /** Missed, and quality has answered for it. */
    EXCUSED;

    /** Tells whether somebody must see to it. */
    public boolean open() {
        return this == MISSED || this == OVERDUE || this == DUE;
    }

    /** Tells whether a run on the bench does it. */
    public boolean runnable() {
        return this == OVERDUE || this == DUE;
    }
}
