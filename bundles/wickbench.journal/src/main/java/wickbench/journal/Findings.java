package wickbench.journal;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification.Broken;

/** Collects what does not hold, up to as many findings as anybody reads. */
final class Findings {
    private static final int MOST = 1_000;
    private final StationId station;
    private final List<Broken> found = new ArrayList<>();

    Findings(StationId station) {
        this.station = station;
    }

    /** Notes a break at an entry. */
    void at(long place, String code, Object... values) {
        add(station + ":" + place, code, values);
    }

    /** Notes a break somewhere among entries. */
    void among(long first, long last, String code, Object... values) {
        add(station + ":" + (first == last ? first : first + "-" + last), code, values);
    }

    /** Notes a break in a file. */
    void in(String file, String code, Object... values) {
        add(file, code, values);
    }

    private void add(String where, String code, Object... values) {
        if (found.size() < MOST) {
            found.add(new Broken(where, code, Say.words(code, values)));
        }
    }

    boolean none() {
        return found.isEmpty();
    }

    List<Broken> all() {
        return found;
    }
}
