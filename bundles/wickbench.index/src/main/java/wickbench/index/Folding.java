package wickbench.index;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;

/** Takes some entries of one station into a view that has taken entries of others; for one transaction. */
final class Folding {
    private final IndexView view;
    private final Told told;
    private final Journal journal;
    private final Rows rows;
    /** Subjects on which an entry came late. */
    private final Set<String> late = new HashSet<>();

    Folding(IndexView view, Told told, Journal journal, Rows rows) {
        this.view = view;
        this.told = told;
        this.journal = journal;
        this.rows = rows;
    }

    /** Applies an entry that comes in order, and keeps one that comes late for {@link #finish}. */
    void take(Entry entry) {
        Set<String> subjects = view.subjects(entry);
        boolean inOrder = subjects.stream().allMatch(subject -> !late.contains(subject) && told.last(entry, subject));
        told.add(entry, subjects);
        if (inOrder) {
            view.apply(entry, rows);
        } else {
            late.addAll(subjects);
        }
    }

    /** Folds the subjects anew on which an entry came late, and those that are tied to them. */
    void finish() {
        if (!late.isEmpty()) {
            List<Entry> entries = tied();
            late.stream().sorted().forEach(subject -> view.forget(subject, rows));
            Order.of(entries, view).forEach(entry -> view.apply(entry, rows));
        }
    }

    /** Returns all entries on the late subjects, which grow by those that an entry ties to them. */
    private List<Entry> tied() {
        Map<EntryRef, Entry> found = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(late);
        while (!open.isEmpty()) {
            for (EntryRef ref : told.entries(open.remove())) {
                if (!found.containsKey(ref)) {
                    Entry entry = journal.entry(ref).orElseThrow();
                    found.put(ref, entry);
                    view.subjects(entry).stream().filter(late::add).forEach(open::add);
                }
            }
        }
        return List.copyOf(found.values());
    }
}
