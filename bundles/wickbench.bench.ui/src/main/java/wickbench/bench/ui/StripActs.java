package wickbench.bench.ui;

/** What a person can do with one strip. */
interface StripActs {
    /** Something on the form has changed, or was left. */
    void changed();

    /** Puts this moment into a time. */
    void now(Item item);

    void record();

    /** Goes on to the next strip of the run. */
    void next();

    /** Goes on to another strip of the same sample: a repeat or a dilution. */
    void again();
}
