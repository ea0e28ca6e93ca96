package wickbench.api.index;

/**
 * A row of the index that is not what the journal's entries make.
 *
 * @param view the view whose table it stands in
 * @param row how the table tells it from others: its key, or all of it where the table has none
 */
public record Difference(String view, String table, String row, Kind kind) {

    /** What is wrong with it. */
    public enum Kind {
        /** It says something else. */
        CHANGED,
        /** No entry makes it. */
        ADDED,
        /** It is not there. */
        MISSING
    }
}
