package wickbench.api.journal;

/**
 * The identity of an entry: its station and its place in that station's journal.
 *
 * @param seq counted from 0; also the entry's leaf index in the station's Merkle tree
 */
public record EntryRef(StationId station, long seq) {
    public EntryRef {
        if (seq < 0) {
            throw new IllegalArgumentException("expected a place from 0 on, found " + seq);
        }
    }

    /**
     * Reads {@code STATION:SEQ}.
     *
     * @throws IllegalArgumentException when the text has another form
     */
    public static EntryRef parse(String text) {
        int colon = text.lastIndexOf(':');
        if (colon < 1) {
            throw new IllegalArgumentException("expected STATION:NUMBER, found '" + text + "'");
        }
        return new EntryRef(new StationId(text.substring(0, colon)), place(text.substring(colon + 1)));
    }

    private static long place(String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("expected STATION:NUMBER, found number '" + text + "'", e);
        }
    }

    @Override
    public String toString() {
        return station + ":" + seq;
    }
}
