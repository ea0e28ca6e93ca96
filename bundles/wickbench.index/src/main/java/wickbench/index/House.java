package wickbench.index;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import wickbench.api.index.IndexView;
import wickbench.api.index.ViewState;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;
import wickbench.index.SqlFailure.Damaged;

/** An open index file with the tables of the views there are now. */
final class House implements AutoCloseable {
    private final H2File file;
    private final Journal journal;
    private List<IndexView> furnished = List.of();
    private final Map<String, ViewTables> tables = new ConcurrentSkipListMap<>();

    House(H2File file, Journal journal) {
        this.file = file;
        this.journal = journal;
        try (Session session = file.session("information_schema", true)) {
            Marks.make(session);
        }
    }

    /** Takes up views that came and lets go of those that left; a view that comes back goes on where it was. */
    void furnish(List<IndexView> views) {
        if (views.equals(furnished)) {
            return;
        }
        Map<String, IndexView> wanted = byName(views);
        for (ViewTables known : List.copyOf(tables.values())) {
            if (wanted.get(known.view().name()) != known.view()) {
                tables.remove(known.view().name());
                known.close();
            }
        }
        Tampering tampering = new Tampering(journal);
        for (IndexView view : wanted.values()) {
            if (!tables.containsKey(view.name())) {
                tables.put(view.name(), open(view, tampering));
            }
        }
        furnished = views;
    }

    private ViewTables open(IndexView view, Tampering tampering) {
        ViewTables opened = new ViewTables(file, view, journal);
        try {
            tampering.refuse(opened);
            return opened;
        } catch (RuntimeException e) {
            opened.close();
            throw e;
        }
    }

    /** Brings every view up to date; those that failed before are left out. */
    void catchUp(Progress progress) {
        // asked once: another station may come in at any moment, and then its entries wait for the next time
        List<StationId> stations = journal.stations();
        new Telling(journal, stations, tables.values()).run();
        List<ViewTables> sound = tables.values().stream()
                .filter(view -> view.failure().isEmpty())
                .toList();
        new CatchUp(journal, stations, sound, progress).run(file::fill);
        file.keep();
    }

    ViewTables tables(String view) {
        ViewTables found = tables.get(view);
        if (found == null) {
            throw new IllegalStateException("no view is named " + view + "; there are " + tables.keySet());
        }
        return found;
    }

    Collection<ViewTables> all() {
        return tables.values();
    }

    List<ViewState> states() {
        long of = total();
        List<ViewState> states = new ArrayList<>();
        for (ViewTables each : tables.values()) {
            states.add(new ViewState(each.view().name(), each.view().version(), each.taken(), of, each.failure()));
        }
        return states;
    }

    long total() {
        return journal.stations().stream().mapToLong(journal::size).sum();
    }

    @Override
    public void close() {
        tables.values().forEach(ViewTables::close);
        file.close();
    }

    /** Closes as well as a broken file lets itself be closed; it is thrown away next, so its complaints tell nothing new. */
    void abandon() {
        List<Runnable> parts = new ArrayList<>();
        parts.add(file::abandon);
        tables.values().forEach(view -> parts.add(view::close));
        for (Runnable part : parts) {
            try {
                part.run();
            } catch (Damaged | SqlFailure expected) {
                continue;
            }
        }
    }

    private static Map<String, IndexView> byName(List<IndexView> views) {
        Map<String, IndexView> named = new HashMap<>();
        for (IndexView view : views) {
            if (named.put(view.name(), view) != null) {
                throw new IllegalStateException("two views are named " + view.name());
            }
        }
        return named;
    }
}
