package wickbench.api.check;

/** Ends an act because a rule says no; nothing was done. The command line ends with 3. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String code;

    /**
     * @param code which rule, for example {@code home.held}
     * @param text the reason in one line, with its facts
     */
    public Refusal(String code, String text) {
        super(text);
        this.code = code;
    }

    public String code() {
        return code;
    }
}
