package wickbench.index;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;

/** One pass over what the journal has got since, read once for all views that are behind. */
final class CatchUp {
    /** Entries a transaction: enough that its cost is spread thin, few enough to fit in memory many times over. */
    private static final int BATCH = 1000;
    /** Entries that are worth preparing the file for. */
    private static final int MUCH = 3 * BATCH;

    private final Journal journal;
    private final List<StationId> stations;
    private final List<ViewTables> views;
    private final Progress progress;
    private final List<Entry> batch = new ArrayList<>();
    private long done;
    private long total;
    private boolean wanted = true;

    CatchUp(Journal journal, List<StationId> stations, List<ViewTables> views, Progress progress) {
        this.journal = journal;
        this.stations = stations;
        this.views = views;
        this.progress = progress;
    }

    /** @param much prepares the file for much and then does what it is given */
    void run(Consumer<Runnable> much) {
        List<Stretch> stretches = stations.stream()
                .map(this::stretch)
                .filter(each -> each.from() < each.to())
                .toList();
        total = stretches.stream().mapToLong(each -> each.to() - each.from()).sum();
        if (total >= MUCH) {
            much.accept(() -> stretches.forEach(this::read));
        } else {
            stretches.forEach(this::read);
        }
    }

    /** Entries of one station that at least one view has not got. */
    private record Stretch(StationId station, long from, long to) {}

    private Stretch stretch(StationId station) {
        long size = journal.size(station);
        long from = size;
        for (ViewTables view : views) {
            Tampering.refuseAhead(station, view.taken(station), size);
            from = Math.min(from, view.taken(station));
        }
        return new Stretch(station, from, size);
    }

    private void read(Stretch stretch) {
        if (!wanted) {
            return;
        }
        journal.read(stretch.station(), stretch.from(), entry -> {
            batch.add(entry);
            boolean last = entry.ref().seq() == stretch.to() - 1;
            if (last || batch.size() == BATCH) {
                deliver();
            }
            return wanted && !last;
        });
    }

    private void deliver() {
        for (ViewTables view : views) {
            long taken = view.taken(batch.get(0).ref().station());
            List<Entry> fresh =
                    batch.stream().filter(entry -> entry.ref().seq() >= taken).toList();
            // a view that failed a batch ago has a gap before this one
            if (view.failure().isEmpty() && !fresh.isEmpty()) {
                view.take(fresh);
            }
        }
        done += batch.size();
        batch.clear();
        wanted = progress.at(done, total);
    }
}
