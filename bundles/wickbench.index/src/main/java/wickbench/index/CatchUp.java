package wickbench.index;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
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
    private long done;
    private long total;

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
            // reading takes about as long as taking in
            much.accept(() -> Ahead.run("wickbench-index-ahead", put -> read(stretches, put), this::deliver));
        } else {
            read(stretches, this::deliver);
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

    private void read(List<Stretch> stretches, Predicate<List<Entry>> taker) {
        for (Stretch stretch : stretches) {
            if (!read(stretch, taker)) {
                return;
            }
        }
    }

    /** Hands over the entries of a stretch, a batch at a time; false when the taker has enough. */
    private boolean read(Stretch stretch, Predicate<List<Entry>> taker) {
        List<Entry> batch = new ArrayList<>();
        boolean[] wanted = {true};
        journal.read(stretch.station(), stretch.from(), entry -> {
            batch.add(entry);
            boolean last = entry.ref().seq() == stretch.to() - 1;
            if (last || batch.size() == BATCH) {
                wanted[0] = taker.test(List.copyOf(batch));
                batch.clear();
            }
            return wanted[0] && !last;
        });
        return wanted[0];
    }

    private boolean deliver(List<Entry> batch) {
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
        return progress.at(done, total);
    }
}
