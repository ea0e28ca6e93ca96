package wickbench.stock.room;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wickbench.api.clash.Settlement;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.lot.LotId;
import wickbench.api.method.Route;
import wickbench.api.words.Coded;
import wickbench.stock.Kit;
import wickbench.stock.room.StockView.Topic;

/** Reads the view's rows as what they mean. */
final class Events {
    private static final String COLUMNS = "select station, seq, id, at, kind, subject, signed, body from ";

    private final Rows rows;
    private final Parsed parsed;

    Events(Rows rows, Parsed parsed) {
        this.rows = rows;
        this.parsed = parsed;
    }

    /** What an entry about a lot says; empty when this program knows no such kind. */
    private record Read(Optional<LotEvent> event) {}

    /** A row that is not about a lot: its kind, body and entry. */
    record Said(EntryRef entry, Instant at, String kind, String subject, boolean signed, Json.Obj body) {}

    KitBook kits() {
        return new KitBook(rows.read(COLUMNS + Topic.KIT.table() + " order by at, station, seq", this::defined));
    }

    private KitBook.Defined defined(Row row) {
        EntryRef ref = ref(row);
        Kit kit = parsed.of(
                ref,
                Kit.class,
                () -> KitJson.read(ref.toString(), body(row, ref)).orRefuse());
        return new KitBook.Defined(row.instant("at"), kit);
    }

    List<Told> lot(LotId lot) {
        return rows.read(COLUMNS + Topic.LOT.table() + " where subject = ?", this::told, lot.value()).stream()
                .flatMap(Optional::stream)
                .toList();
    }

    Map<LotId, List<Told>> lots() {
        Map<LotId, List<Told>> lots = new LinkedHashMap<>();
        rows.read(COLUMNS + Topic.LOT.table() + " order by subject, station, seq", this::told).stream()
                .flatMap(Optional::stream)
                .forEach(told -> lots.computeIfAbsent(told.event().lot(), lot -> new ArrayList<>())
                        .add(told));
        return lots;
    }

    /** Returns what was said of a topic, by when it was written. */
    List<Said> said(Topic topic) {
        return rows.read(COLUMNS + topic.table() + " order by at, station, seq", Events::said);
    }

    /** Returns the same of a topic of which little is said, each entry parsed once. */
    List<Said> remembered(Topic topic) {
        return rows.read(
                COLUMNS + topic.table() + " order by at, station, seq",
                row -> parsed.of(ref(row), Said.class, () -> said(row)));
    }

    List<Said> said(Topic topic, String subject) {
        return rows.read(
                COLUMNS + topic.table() + " where subject = ? order by at, station, seq", Events::said, subject);
    }

    /** Returns what was said of fridges themselves, logs left out. */
    List<Said> fridges() {
        return rows.read(
                COLUMNS + Topic.FRIDGE.table() + " where kind = ? order by at, station, seq",
                row -> parsed.of(ref(row), Said.class, () -> said(row)),
                FridgeJson.REGISTERED);
    }

    /** Returns how each fridge stood at the end of its newest log; the bodies of logs that are known are not read again. */
    Map<String, HeardFridge> heard() {
        Map<String, HeardFridge> ends = new HashMap<>();
        rows.read(
                        "select station, seq, subject from fridge_event where kind in (?, ?)",
                        Events::log,
                        FridgeJson.LOGGED,
                        FridgeJson.MEASURED)
                .forEach(log -> ends.merge(
                        log.fridge(),
                        parsed.of(log.entry(), HeardFridge.class, () -> end(log.entry())),
                        HeardFridge::later));
        return ends;
    }

    private record LogOf(EntryRef entry, String fridge) {}

    private static LogOf log(Row row) {
        return new LogOf(ref(row), row.text("subject"));
    }

    private HeardFridge end(EntryRef log) {
        return rows.first(
                        COLUMNS + Topic.FRIDGE.table() + " where station = ? and seq = ?",
                        Events::said,
                        log.station().value(),
                        log.seq())
                .map(said -> HeardFridge.of(FridgeJson.log(said)))
                .orElseThrow();
    }

    boolean any(Topic topic, Instant at) {
        return rows.first(
                        "select seq from " + topic.table() + " where acted_at <= ? limit 1",
                        row -> row.whole("seq"),
                        at)
                .isPresent();
    }

    /** Returns what the issued methods say of kits and their inserts. */
    Inserts inserts() {
        return IssuedRows.read(rows);
    }

    Uses uses(LotId lot) {
        return new Uses() {
            private final Map<Instant, Map<Route, Long>> counted = new HashMap<>();

            @Override
            public Map<Route, Long> between(Instant after, Instant upTo) {
                // asked for each part of a kit, all of them since the same count as a rule
                return counted.computeIfAbsent(after, since -> count(since, upTo));
            }

            private Map<Route, Long> count(Instant after, Instant upTo) {
                Map<Route, Long> found = new TreeMap<>();
                rows.read(
                                "select route, count(*) as strips from strip where lot = ? and counts and taken > ?"
                                        + " and taken <= ? group by route",
                                row -> Map.entry(Coded.of(Route.class, row.text("route")), row.whole("strips")),
                                lot.value(),
                                after,
                                upTo)
                        .forEach(each -> found.put(each.getKey(), each.getValue()));
                return found;
            }

            @Override
            public List<Gone> newest(Instant upTo, long most) {
                return rows.read(
                        "select station, seq, taken from strip where lot = ? and counts and taken <= ?"
                                + " order by taken desc, station, seq limit ?",
                        row -> new Gone(ref(row), row.instant("taken")),
                        lot.value(),
                        upTo,
                        most);
            }
        };
    }

    private static EntryRef ref(Row row) {
        return new EntryRef(new StationId(row.text("station")), row.whole("seq"));
    }

    private Optional<Told> told(Row row) {
        EntryRef ref = ref(row);
        return parsed.of(ref, Read.class, () -> new Read(event(row, ref)))
                .event()
                .map(event -> new Told(ref, row.uuid("id"), row.instant("at"), row.flag("signed"), event));
    }

    private static Optional<LotEvent> event(Row row, EntryRef ref) {
        return row.text("kind").equals(Settlement.KIND)
                ? Optional.of(settled(row, ref))
                : LotEventJson.read(ref.toString(), row.text("kind"), body(row, ref));
    }

    private static LotEvent settled(Row row, EntryRef ref) {
        Fields fields = Fields.of(ref.toString(), body(row, ref));
        Set<EntryRef> dropped =
                fields.texts("among").stream().map(EntryRef::parse).collect(Collectors.toSet());
        dropped.remove(EntryRef.parse(fields.text("stands")));
        return new LotEvent.Settled(new LotId(row.text("subject")), row.instant("at"), dropped);
    }

    private static Said said(Row row) {
        EntryRef ref = ref(row);
        return new Said(
                ref, row.instant("at"), row.text("kind"), row.text("subject"), row.flag("signed"), body(row, ref));
    }

    private static Json.Obj body(Row row, EntryRef ref) {
        return JsonReader.readObject(ref.toString(), row.text("body")).orRefuse();
    }
}
