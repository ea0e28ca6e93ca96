package wickbench.reading.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which running strips can be read in time: as many as possible, when nothing new is started.
 *
 * <p>Strips with equal looks of which each opens and closes no sooner than the one before are read in that order as far as they are
 * saved: exchanging two looks keeps every window. So strips are put into such rows, and what matters is only how far each row is
 * done, how many were saved, and the soonest end of their looks. With too many rows all strips make one, which saves the most wherever
 * all windows open in the order in which they close (Kise, Ibaraki and Mine 1978, Operations Research 26), and may else save one less.
 */
final class Saving {
    /** How many ways of having done rows in part are looked at; with more, all strips make one row by their deadlines. */
    private static final long MOST = 200_000;

    private final PlanRequest request;
    private final List<List<StartedStrip>> rows = new ArrayList<>();

    Saving(PlanRequest request) {
        this.request = request;
        List<StartedStrip> byDeadline = request.running().stream()
                .sorted(Comparator.comparing(this::latest).thenComparing(Saving::opens))
                .toList();
        byDeadline.forEach(this::intoRow);
        long ways = byDeadline.size();
        for (List<StartedStrip> row : rows) {
            ways = Math.min(MOST + 1, ways * (row.size() + 1));
        }
        if (ways > MOST) {
            rows.clear();
            rows.add(byDeadline);
        }
    }

    /** How far each row is done, when the last look ends, and the strip saved last. */
    private record Saved(List<Integer> done, long end, StartedStrip last, Saved before) {}

    /** Returns the strips to keep, in the order of the request. */
    List<StartedStrip> kept() {
        List<Integer> none = rows.stream().map(row -> 0).toList();
        Saved most = new Saved(none, request.freeFrom().toMillis(), null, null);
        Map<List<Integer>, Saved> layer = Map.of(none, most);
        while (!layer.isEmpty()) {
            Map<List<Integer>, Saved> next = new HashMap<>();
            for (Saved saved : layer.values()) {
                oneMore(saved, next);
            }
            layer = next;
            most = next.values().stream()
                    .min(Comparator.comparingLong(Saved::end)
                            .thenComparing(saved -> saved.done().toString()))
                    .orElse(most);
        }
        List<StartedStrip> kept = new ArrayList<>();
        for (Saved saved = most; saved.last() != null; saved = saved.before()) {
            kept.add(saved.last());
        }
        return request.running().stream().filter(kept::contains).toList();
    }

    /** Reads one more strip of each row, passing over any before it that are then lost. */
    private void oneMore(Saved saved, Map<List<Integer>, Saved> next) {
        for (int row = 0; row < rows.size(); row++) {
            for (int i = saved.done().get(row); i < rows.get(row).size(); i++) {
                StartedStrip strip = rows.get(row).get(i);
                long begin = Math.max(saved.end(), opens(strip));
                if (begin <= latest(strip)) {
                    List<Integer> done = new ArrayList<>(saved.done());
                    done.set(row, i + 1);
                    long end = begin + strip.strip().look().toMillis();
                    next.merge(
                            done,
                            new Saved(done, end, strip, saved),
                            (one, other) -> one.end() <= other.end() ? one : other);
                }
            }
        }
    }

    private void intoRow(StartedStrip strip) {
        for (List<StartedStrip> row : rows) {
            StartedStrip before = row.get(row.size() - 1);
            if (opens(before) <= opens(strip)
                    && before.strip().look().equals(strip.strip().look())) {
                row.add(strip);
                return;
            }
        }
        rows.add(new ArrayList<>(List.of(strip)));
    }

    private static long opens(StartedStrip strip) {
        return strip.startedAt().plus(strip.strip().develop()).toMillis();
    }

    private long latest(StartedStrip strip) {
        return opens(strip) + request.rule().slack(strip.strip()).toMillis();
    }
}
