package wickbench.journal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification.Broken;

/** Collects what does not hold, up to as many findings as anybody reads. */
final class Findings {
    private static final int MOST = 1_000;
    private final StationId station;
    private final List<Finding> found = new ArrayList<>();

    /** Where a break lies, so that the closest comes first; a file comes after all entries. */
    private record Finding(long last, long width, Broken broken) {
        static final Comparator<Finding> ORDER =
                Comparator.comparingLong(Finding::last).thenComparingLong(Finding::width);
    }

    Findings(StationId station) {
        this.station = station;
    }

    /** Notes a break at an entry. */
    void at(long place, String code, Object... values) {
        among(place, place, code, values);
    }

    /** Notes a break somewhere among entries. */
    void among(long first, long last, String code, Object... values) {
        String places = first == last ? Long.toString(first) : first + "-" + last;
        add(last, last - first, station + ":" + places, code, values);
    }

    /** Notes a break in a file. */
    void in(String file, String code, Object... values) {
        add(Long.MAX_VALUE, 0, file, code, values);
    }

    private void add(long last, long width, String where, String code, Object... values) {
        if (found.size() < MOST) {
            found.add(new Finding(last, width, new Broken(where, code, Say.words(code, values))));
        }
    }

    boolean none() {
        return found.isEmpty();
    }

    /** Returns all breaks, the first entry's first. */
    List<Broken> all() {
        return found.stream().sorted(Finding.ORDER).map(Finding::broken).toList();
    }
}
