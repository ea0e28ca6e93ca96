package wickbench.stock.room;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.authority.Signature;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.stock.Clash;

/**
 * What was told of kits, lots, fridges and devices, which strips were read, and which kit each method is written for.
 *
 * <p>Rows are what entries say and nothing more; states are folded from them when asked for, in an order of their own. So the
 * order in which entries come does not matter.
 */
@Component
public final class StockView implements IndexView {
    public static final String NAME = "stock";

    private static final List<String> STRIPS = List.of(
            StripRows.TABLE,
            "create index by_result on strip (result)",
            "create index by_lot on strip (lot, taken, counts, route)",
            "create index by_kit on strip (kit, taken)");

    /** What decides how a lot stands. */
    private static final Set<String> DECIDING = Set.of(
            LotEventJson.CHECKED,
            LotEventJson.WAIVED,
            LotEventJson.REJECTED,
            LotEventJson.RELEASED,
            LotEventJson.USED_UP,
            LotEventJson.DESTROYED);

    /** What an event is about. */
    enum Topic {
        KIT("kit.", "kit"),
        LOT("lot.", "lot"),
        FRIDGE("fridge.", "fridge"),
        DEVICE("device.", "device");

        private final String kinds;
        private final String subject;

        Topic(String kinds, String subject) {
            this.kinds = kinds;
            this.subject = subject;
        }

        /** Each has a table of its own: the bench asks of lots all day, and logs of fridges are long. */
        String table() {
            return subject + "_event";
        }

        private Stream<String> made() {
            return Stream.of(
                    "create table " + table() + " (station varchar(32) not null, seq bigint not null, id uuid not null,"
                            + " at timestamp(3) with time zone not null,"
                            + " acted_at timestamp(3) with time zone not null, kind varchar(64) not null,"
                            + " subject varchar(200) not null, written_by varchar(32) not null,"
                            + " signed boolean not null, body character varying not null, primary key (station, seq))",
                    "create index " + subject + "_by_subject on " + table() + " (subject)");
        }
    }

    @Activate
    public StockView() {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 5;
    }

    @Override
    public List<String> tables() {
        return Stream.of(
                        Arrays.stream(Topic.values()).flatMap(Topic::made), STRIPS.stream(), IssuedRows.TABLES.stream())
                .flatMap(some -> some)
                .toList();
    }

    @Override
    public Set<String> subjects(Entry entry) {
        // a row for each entry; strips are weighed by their order as it stands in the table
        return Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        return DECIDING.contains(entry.kind()) && entry.v() == LotEventJson.VERSION
                ? Optional.of(new Decision(Clash.subject(new LotId(subject(entry, Topic.LOT))), claim(entry)))
                : Optional.empty();
    }

    /** A check that passed decides; one that failed is followed by its own rejection. */
    private static String claim(Entry entry) {
        boolean failed = entry.body().get("passed").equals(Optional.of(new Json.Bool(false)));
        return failed ? LotEventJson.REJECTED : entry.kind();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)
                || entry.is(CorrectedReading.KIND, CorrectedReading.VERSION)) {
            StripRows.take(entry, rows);
        } else if (IssuedRows.tells(entry)) {
            IssuedRows.take(entry, rows);
        } else if (Settlement.of(entry).isPresent()) {
            settled(entry, Settlement.of(entry).get(), rows);
        } else if (entry.v() == LotEventJson.VERSION) {
            for (Topic topic : Topic.values()) {
                if (entry.kind().startsWith(topic.kinds)) {
                    event(entry, topic, rows);
                }
            }
        }
    }

    private static void settled(Entry entry, Settlement settlement, Rows rows) {
        Clash.lot(settlement.subject()).ifPresent(lot -> event(entry, Topic.LOT, lot.value(), rows));
    }

    private static void event(Entry entry, Topic topic, Rows rows) {
        event(entry, topic, subject(entry, topic), rows);
    }

    private static void event(Entry entry, Topic topic, String subject, Rows rows) {
        rows.write(
                "insert into " + topic.table()
                        + " (station, seq, id, at, acted_at, kind, subject, written_by, signed, body)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.id(),
                entry.at(),
                actedAt(entry),
                entry.kind(),
                subject,
                entry.by().value(),
                Signature.under(entry).signed(),
                entry.body().canonical());
    }

    private static Instant actedAt(Entry entry) {
        Fields fields = Fields.of(entry.ref().toString(), entry.body());
        return entry.body()
                .get("at")
                .flatMap(at -> fields.optionalInstant("at"))
                .orElse(entry.at());
    }

    private static String subject(Entry entry, Topic topic) {
        return Optional.of(entry.body())
                .flatMap(body -> body.get(topic.subject))
                .filter(Json.Text.class::isInstance)
                .map(text -> ((Json.Text) text).value())
                .orElse("");
    }
}
