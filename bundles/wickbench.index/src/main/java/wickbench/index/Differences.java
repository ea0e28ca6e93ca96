package wickbench.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wickbench.api.index.Difference;

/** Collects differing rows, up to as many as anybody reads. */
final class Differences {
    private static final int MOST = 1_000;
    private final List<Difference> found = new ArrayList<>();

    void add(String view, String table, String row, Difference.Kind kind) {
        if (found.size() < MOST) {
            found.add(new Difference(view, table.toLowerCase(Locale.ROOT), row, kind));
        }
    }

    List<Difference> all() {
        return List.copyOf(found);
    }
}
