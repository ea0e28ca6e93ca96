package wickbench.stock.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wickbench.stock.Excursion;

/**
 * Excursions as they are found, all of them while they are not too many to keep.
 *
 * <p>A probe at the edge of its range crosses it with every reading. Then the earliest and the longest are kept, since a lot is held
 * from the first one on that is too long, and the others are counted.
 */
final class Excursions {
    static final int EARLIEST = 1_000;
    static final int LONGEST = 20_000;

    private List<Excursion> kept = new ArrayList<>();
    private long all;

    void add(Excursion found) {
        kept.add(found);
        all++;
        if (kept.size() > 2 * (EARLIEST + LONGEST)) {
            drop();
        }
    }

    private void drop() {
        Set<Excursion> keep = new LinkedHashSet<>(kept.subList(0, EARLIEST));
        kept.stream()
                .sorted(Comparator.comparing(Excursion::length).reversed())
                .limit(LONGEST)
                .forEach(keep::add);
        kept = new ArrayList<>(keep);
        kept.sort(Comparator.comparing(Excursion::from));
    }

    List<Excursion> kept() {
        return kept;
    }

    /** Returns how many are only counted. */
    long leftOut() {
        return all - kept.size();
    }
}
