package wickbench.index;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;

/**
 * The one order in which entries of several stations apply, whatever the order in which they came.
 *
 * <p>Within a station {@code seq} rules, whatever its clock said; an entry comes after every entry that it names, whatever the
 * clocks of the two stations said; (at, station, seq) orders the rest.
 */
final class Order {
    static final Comparator<Entry> REST = Comparator.comparing(Entry::at)
            .thenComparing((Entry entry) -> entry.ref().station())
            .thenComparingLong(entry -> entry.ref().seq());

    private final Function<Entry, Set<UUID>> names;
    private final Map<StationId, Deque<Entry>> stations = new TreeMap<>();
    /** Ids of entries not yet placed, and how many have each: two stations may have recorded the same. */
    private final Map<UUID, Integer> waiting = new HashMap<>();

    private Order(List<Entry> entries, Function<Entry, Set<UUID>> names) {
        this.names = names;
        entries.stream()
                .sorted(Comparator.comparingLong(entry -> entry.ref().seq()))
                .forEach(entry -> stations.computeIfAbsent(entry.ref().station(), station -> new ArrayDeque<>())
                        .add(entry));
        entries.forEach(entry -> waiting.merge(entry.id(), 1, Integer::sum));
    }

    /** Puts different entries in order. */
    static List<Entry> of(List<Entry> entries, Function<Entry, Set<UUID>> names) {
        return new Order(entries, names).placed(entries.size());
    }

    private List<Entry> placed(int size) {
        List<Entry> placed = new ArrayList<>(size);
        while (placed.size() < size) {
            Entry next = next();
            stations.get(next.ref().station()).remove();
            waiting.merge(next.id(), -1, Integer::sum);
            placed.add(next);
        }
        return placed;
    }

    private Entry next() {
        List<Entry> heads = stations.values().stream()
                .filter(queue -> !queue.isEmpty())
                .map(Deque::peek)
                .sorted(REST)
                .toList();
        // entries that name one another in a ring were made by no honest program; they apply by time
        return heads.stream().filter(this::ready).findFirst().orElse(heads.get(0));
    }

    private boolean ready(Entry entry) {
        Set<UUID> before = new HashSet<>(names.apply(entry));
        before.remove(entry.id());
        return before.stream().noneMatch(id -> waiting.getOrDefault(id, 0) > 0);
    }
}
