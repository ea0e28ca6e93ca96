package wickbench.ledger.acts;

import wickbench.api.words.Coded;

/** What is released. */
public record Subject(Sort sort, String name) {

    /** Lines and batches. */
    public enum Sort implements Coded {
        BATCH,
        LINE
    }

    public static Subject batch(String name) {
        return new Subject(Sort.BATCH, name);
    }

    public static Subject line(String name) {
        return new Subject(Sort.LINE, name);
    }
}
