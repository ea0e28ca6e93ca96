package wickbench.ledger.desk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Refusal;
import wickbench.api.index.Index;
import wickbench.api.index.Row;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.ledger.acts.Decided;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Released;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.acts.Taken;

/** Finds the acts by what they are about, each as it stands in the journal, oldest first. */
record Acts(Index index, Journal journal) {
    private static final String PLACES =
            "select a.station, a.seq, exists (select 1 from lost l where l.station = a.station and l.seq = a.seq) as gone"
                    + " from act a where a.kind = ? and a.about = ? order by a.at, a.station, a.seq";

    /** Where an act stands. */
    private record Place(EntryRef ref, boolean gone) {}

    List<Taken> decisions(UUID result) {
        return places(Decided.KIND, result.toString()).stream()
                .map(place -> taken(entry(place.ref()), !place.gone()))
                .toList();
    }

    private static Taken taken(Entry entry, boolean stands) {
        return new Taken(entry, Decided.of(entry).orElseThrow(), stands);
    }

    /** Returns every result because of which something was decided. */
    List<UUID> decidedOn() {
        return index.read(
                ActsView.NAME,
                rows -> rows.read(
                        "select distinct about from act where kind = ? order by about",
                        row -> UUID.fromString(row.text("about")),
                        Decided.KIND));
    }

    /** Returns the results because of which something was decided about a batch. */
    List<UUID> decidedOnBatch(String batch) {
        return places(ActsView.BATCH, batch).stream()
                .map(place -> Decided.of(entry(place.ref())).orElseThrow().result())
                .distinct()
                .toList();
    }

    List<Outside> outside(UUID result) {
        return outside(result.toString());
    }

    List<Outside> outsideOfBatch(String batch) {
        return outside(ActsView.OF_BATCH + batch);
    }

    /** Returns what other laboratories reported of anything, the newest first. */
    List<Entry> outside(int most) {
        List<Place> places = index.read(
                ActsView.NAME,
                rows -> rows.read(
                        "select station, seq, false as gone from act where kind = ? and about = ?"
                                + " order by at desc, station desc, seq desc fetch first ? rows only",
                        Acts::place,
                        Outside.KIND,
                        ActsView.ANYTHING,
                        most));
        return places.stream().map(place -> entry(place.ref())).toList();
    }

    private List<Outside> outside(String about) {
        return places(Outside.KIND, about).stream()
                .map(place -> Outside.of(entry(place.ref())).orElseThrow())
                .toList();
    }

    /** Returns the plan of a line that holds: the newest. */
    Optional<ReleasePlan> plan(String line) {
        return places(ReleasePlan.KIND, line).stream()
                .filter(place -> !place.gone())
                .reduce((older, newer) -> newer)
                .map(place -> ReleasePlan.of(entry(place.ref())).orElseThrow());
    }

    List<ReleasePlan> plans() {
        List<String> lines = index.read(
                ActsView.NAME,
                rows -> rows.read(
                        "select distinct about from act where kind = ? order by about",
                        row -> row.text("about"),
                        ReleasePlan.KIND));
        return lines.stream().flatMap(line -> plan(line).stream()).toList();
    }

    List<Entry> released(Subject subject) {
        return places(Released.KIND, ActsView.about(subject)).stream()
                .map(place -> entry(place.ref()))
                .toList();
    }

    /** Returns the newest act of a kind about something that lost no clash. */
    Optional<Entry> newest(String kind, String about) {
        return places(kind, about).stream()
                .filter(place -> !place.gone())
                .reduce((older, newer) -> newer)
                .map(place -> entry(place.ref()));
    }

    private List<Place> places(String kind, String about) {
        return index.read(ActsView.NAME, rows -> rows.read(PLACES, Acts::place, kind, about));
    }

    private static Place place(Row row) {
        return new Place(new EntryRef(new StationId(row.text("station")), row.whole("seq")), row.flag("gone"));
    }

    /** Returns when an entry was written; empty where it is not here. */
    Optional<Instant> written(UUID id) {
        return index.find(id).flatMap(journal::entry).map(Entry::at);
    }

    private Entry entry(EntryRef ref) {
        return journal.entry(ref).orElseThrow(() -> new Refusal("ledger.unrecorded", ActsWords.get("unrecorded", ref)));
    }
}
