package wickbench.attachments.look;

/** Ends the look at a file that cannot be taken; never leaves this package. */
final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;

    static final String EMPTY = "empty";
    static final String UNKNOWN = "unknown";
    static final String CUT_SHORT = "cut-short";
    static final String DAMAGED = "damaged";
    static final String TWO_KINDS = "two-kinds";

    Unfit(String reason) {
        super(reason, null, false, false);
    }
}
