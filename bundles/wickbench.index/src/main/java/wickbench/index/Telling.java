package wickbench.index;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;

/**
 * Makes views ready for entries of several stations: reads once more what they have taken and keeps what it told on each subject.
 *
 * <p>Done once, when the second station is seen; a home that stays alone never pays for it.
 */
final class Telling {
    private static final int BATCH = 1000;

    private final Journal journal;
    private final List<StationId> stations;
    private final List<ViewTables> views;

    Telling(Journal journal, List<StationId> stations, Collection<ViewTables> views) {
        this.journal = journal;
        this.stations = stations;
        this.views = stations.size() < 2
                ? List.of()
                : views.stream()
                        .filter(view -> !view.several() && view.failure().isEmpty())
                        .toList();
    }

    void run() {
        if (views.isEmpty()) {
            return;
        }
        views.forEach(ViewTables::beginTelling);
        stations.forEach(this::tell);
        sound().forEach(ViewTables::endTelling);
    }

    private List<ViewTables> sound() {
        return views.stream().filter(view -> view.failure().isEmpty()).toList();
    }

    private void tell(StationId station) {
        long to = views.stream().mapToLong(view -> view.taken(station)).max().orElse(0);
        List<Entry> batch = new ArrayList<>();
        if (to > 0) {
            journal.read(station, 0, entry -> {
                boolean last = entry.ref().seq() == to - 1;
                batch.add(entry);
                if (last || batch.size() == BATCH) {
                    sound().forEach(view -> view.tell(taken(view, batch)));
                    batch.clear();
                }
                return !last;
            });
        }
    }

    private static List<Entry> taken(ViewTables view, List<Entry> batch) {
        return batch.stream()
                .filter(entry -> entry.ref().seq() < view.taken(entry.ref().station()))
                .toList();
    }
}
