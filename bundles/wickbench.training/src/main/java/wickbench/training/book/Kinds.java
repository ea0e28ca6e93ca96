package wickbench.training.book;

/** The kinds of entry that this bundle writes; each has a schema {@code docs/formats/KIND-1.schema.json}. */
public final class Kinds {
    public static final String TERMS = "training.terms-set";
    public static final String AUTHORISED = "training.authorised";
    public static final String SUSPENDED = "training.suspended";
    public static final String RESTORED = "training.restored";
    public static final String ACKNOWLEDGED = "training.acknowledged";
    public static final String SIGHT = "training.sight-tested";
    public static final String LIGHT = "training.light-measured";
    public static final String OBSERVED = "training.observed";
    public static final String QUESTIONS = "training.questions-issued";
    public static final String ANSWERED = "training.answered";
    public static final String SEEN = "training.seen";
    public static final String OPENED = "round.opened";
    public static final String CALLED = "round.called";
    public static final String CLOSED = "round.closed";
    public static final String SCORED = "round.scored";
    public static final String DRILLED = "drill.done";
    public static final int VERSION = 1;

    static final String TRAINING = "training.";
    static final String ROUND = "round.";

    /** Entries that practice writes. */
    static final String PRACTICE = "drill.";

    private Kinds() {}
}
