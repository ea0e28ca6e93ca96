package wickbench.figures.sums;

import wickbench.api.check.Complaint;

/** Ends a sum because an input is wrong; never leaves this package. */
final class Wrong extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String input;
    private final transient Complaint complaint;

    Wrong(String input, Complaint complaint) {
        super(complaint.oneLine(), null, false, false);
        this.input = input;
        this.complaint = complaint;
    }

    static Wrong of(String input, String key, Object... facts) {
        return new Wrong(input, Complaint.of(input, SumWords.get(key, facts)));
    }

    Reckoned told() {
        return new Reckoned.Wrong(input, complaint);
    }
}
