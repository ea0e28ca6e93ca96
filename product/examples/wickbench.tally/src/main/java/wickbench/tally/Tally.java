package wickbench.tally;

import java.util.List;
import wickbench.api.index.Index;

/**
 * How often a kind of entry stands in the journal.
 *
 * @param kind such as {@code reading.recorded}
 */
record Tally(String kind, long entries) {

    /** Reads all kinds there are, the most frequent first; never on the UI thread. */
    static List<Tally> all(Index index) {
        return index.read(
                TallyView.NAME,
                rows -> rows.read(
                        "select kind, count(*) as entries from tally group by kind order by count(*) desc, kind",
                        row -> new Tally(row.text("kind"), row.whole("entries"))));
    }
}
