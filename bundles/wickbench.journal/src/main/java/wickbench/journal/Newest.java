package wickbench.journal;

import java.util.List;
import java.util.function.Predicate;
import wickbench.api.journal.Entry;

/**
 * The entries of the newest append, as they were read back from their own lines before they went to the disk.
 *
 * <p>Whoever follows the journal asks for exactly these at once, and need not open the file for them.
 *
 * @param first the place of the first of them
 */
record Newest(long first, List<Entry> entries) {
    /** More are not held on to. */
    private static final int MOST = 1_000;

    static final Newest NOTHING = new Newest(0, List.of());

    static Newest of(List<Entry> entries) {
        return entries.isEmpty() || entries.size() > MOST
                ? NOTHING
                : new Newest(entries.get(0).ref().seq(), List.copyOf(entries));
    }

    /** Tells whether these are all there is from a place on. */
    boolean reach(long from, long size) {
        return from >= first && from < size && first + entries.size() == size;
    }

    void read(long from, Predicate<Entry> reader) {
        for (Entry entry : entries.subList(Math.toIntExact(from - first), entries.size())) {
            if (!reader.test(entry)) {
                return;
            }
        }
    }
}
