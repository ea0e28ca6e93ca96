package wickbench.widgets;

/** By which column rows are sorted, and which end comes first. */
public record Sort(String column, boolean ascending) {

    /** Returns the other way round. */
    public Sort reversed() {
        return new Sort(column, !ascending);
    }
}
