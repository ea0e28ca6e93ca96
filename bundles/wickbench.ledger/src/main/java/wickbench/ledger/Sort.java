package wickbench.ledger;

/** The order of results. */
public record Sort(SortColumn column, boolean ascending) {
    public static final Sort NEWEST_FIRST = new Sort(SortColumn.HAPPENED, false);
}
