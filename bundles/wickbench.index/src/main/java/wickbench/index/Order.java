package wickbench.index;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;

/**
 * The one order in which entries of several stations apply, whatever the order in which they came.
 *
 * <p>Within a station {@code seq} rules, whatever its clock said; an entry comes after every entry that it names, whatever the
 * clocks of the two stations said; (at, station, seq) orders the rest. Only entries that share a subject wait for one another, so
 * the order on a subject is the same whatever else is put in order with it.
 */
final class Order {
    private static final Comparator<Entry> REST = Comparator.comparing(Entry::at)
            .thenComparing((Entry entry) -> entry.ref().station())
            .thenComparingLong(entry -> entry.ref().seq());

    private final IndexView view;
    private final Map<Entry, Set<String>> subjects = new IdentityHashMap<>();
    private final Map<Entry, List<Entry>> after = new IdentityHashMap<>();
    private final Map<Entry, Integer> waitsFor = new IdentityHashMap<>();

    private Order(List<Entry> entries, IndexView view) {
        this.view = view;
        List<Entry> bySeq = new ArrayList<>(entries);
        bySeq.sort(Comparator.comparingLong(entry -> entry.ref().seq()));
        bySeq.forEach(entry -> subjects.put(entry, view.subjects(entry)));
        chain(bySeq);
        name(bySeq);
    }

    /** Puts different entries in order. */
    static List<Entry> of(List<Entry> entries, IndexView view) {
        return new Order(entries, view).placed();
    }

    private record Chain(StationId station, String subject) {}

    private void chain(List<Entry> bySeq) {
        Map<Chain, Entry> last = new HashMap<>();
        for (Entry entry : bySeq) {
            for (String subject : subjects.get(entry)) {
                Entry before = last.put(new Chain(entry.ref().station(), subject), entry);
                if (before != null) {
                    wait(entry, before);
                }
            }
        }
    }

    private void name(List<Entry> bySeq) {
        Map<UUID, List<Entry>> byId = new HashMap<>();
        bySeq.forEach(entry ->
                byId.computeIfAbsent(entry.id(), id -> new ArrayList<>()).add(entry));
        for (Entry entry : bySeq) {
            for (UUID id : view.names(entry)) {
                byId.getOrDefault(id, List.of()).stream()
                        .filter(named -> !named.ref().equals(entry.ref())
                                && !Collections.disjoint(subjects.get(named), subjects.get(entry)))
                        .forEach(named -> wait(entry, named));
            }
        }
    }

    private void wait(Entry entry, Entry before) {
        after.computeIfAbsent(before, each -> new ArrayList<>()).add(entry);
        waitsFor.merge(entry, 1, Integer::sum);
    }

    private List<Entry> placed() {
        TreeSet<Entry> ready = new TreeSet<>(REST);
        subjects.keySet().stream().filter(entry -> !waitsFor.containsKey(entry)).forEach(ready::add);
        Set<Entry> left = Collections.newSetFromMap(new IdentityHashMap<>());
        left.addAll(subjects.keySet());
        List<Entry> placed = new ArrayList<>();
        while (!left.isEmpty()) {
            // entries that name one another in a ring were made by no honest program; they apply by time
            Entry next = ready.isEmpty() ? Collections.min(left, REST) : ready.pollFirst();
            if (left.remove(next)) {
                placed.add(next);
                after.getOrDefault(next, List.of()).stream()
                        .filter(waiting -> waitsFor.merge(waiting, -1, Integer::sum) == 0)
                        .forEach(ready::add);
            }
        }
        return placed;
    }
}
