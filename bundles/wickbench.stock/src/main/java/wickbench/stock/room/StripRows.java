package wickbench.stock.room;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.words.Coded;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;
import wickbench.stock.Use;

/**
 * The strips that were read: a row for each statement of a result, of which one counts.
 *
 * <p>The newest statement counts. Once one showed allergen or a sign of it, only another that does takes its place.
 */
final class StripRows {
    static final String TABLE = "create table strip (station varchar(32) not null, seq bigint not null,"
            + " result uuid not null, at timestamp(3) with time zone not null, recording boolean not null,"
            + " counts boolean not null, holds boolean not null, lot varchar(40) not null, kit varchar(200) not null,"
            + " method varchar(64) not null, route varchar(16) not null, taken timestamp(3) with time zone not null,"
            + " sample varchar(200) not null, place varchar(200) not null, line varchar(200), batch varchar(200),"
            + " operator varchar(32) not null, outcome varchar(32) not null, sign boolean not null,"
            + " control varchar(16), lot_check boolean not null, primary key (station, seq))";

    private static final String INSERT =
            "insert into strip (station, seq, result, at, recording, counts, holds, lot, kit,"
                    + " method, route, taken, sample, place, line, batch, operator, outcome, sign, control, lot_check)"
                    + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private StripRows() {}

    /** A statement, as far as weighing goes. */
    private record Stated(String station, long seq, boolean recording, boolean holds) {}

    static void take(Entry entry, Rows rows) {
        String source = entry.ref().toString();
        if (entry.kind().equals(RecordedReading.KIND)) {
            add(
                    entry,
                    entry.id(),
                    true,
                    RecordedReadingJson.read(source, entry.body()).orRefuse(),
                    rows);
        } else {
            CorrectedReading corrected =
                    CorrectedReadingJson.read(source, entry.body()).orRefuse();
            add(entry, corrected.corrects(), false, corrected.now(), rows);
        }
    }

    private static void add(Entry entry, UUID result, boolean recording, RecordedReading reading, Rows rows) {
        boolean alone = rows.read("select seq from strip where result = ?", row -> 0, result)
                .isEmpty();
        insert(entry, result, recording, recording && alone, reading, rows);
        if (!alone) {
            weigh(result, rows);
        }
    }

    private static void insert(
            Entry entry, UUID result, boolean recording, boolean counts, RecordedReading recorded, Rows rows) {
        Reading reading = recorded.reading();
        Sample sample = reading.sample();
        Instant taken =
                reading.times().started().or(() -> reading.times().read()).orElse(entry.at());
        rows.write(
                INSERT,
                entry.ref().station().value(),
                entry.ref().seq(),
                result,
                entry.at(),
                recording,
                counts,
                recorded.verdict().holds(),
                reading.lot().value(),
                recorded.method().kit(),
                recorded.method().ref().toString(),
                reading.route().code(),
                taken,
                sample.code(),
                sample.place(),
                sample.line(),
                sample.batch(),
                reading.operator().value(),
                recorded.verdict().outcome().code(),
                recorded.verdict().sign(),
                sample.control().map(RunControl::code),
                sample.reason().filter(reason -> reason == Reason.LOT_CHECK).isPresent());
    }

    private static void weigh(UUID result, Rows rows) {
        List<Stated> all = rows.read(
                "select station, seq, recording, holds from strip where result = ? order by recording desc, at,"
                        + " station, seq",
                row -> new Stated(row.text("station"), row.whole("seq"), row.flag("recording"), row.flag("holds")),
                result);
        List<Stated> holding = all.stream().filter(Stated::holds).toList();
        rows.write("update strip set counts = false where result = ?", result);
        if (all.stream().anyMatch(Stated::recording)) {
            List<Stated> eligible = holding.isEmpty() ? all : holding;
            Stated newest = eligible.get(eligible.size() - 1);
            rows.write("update strip set counts = true where station = ? and seq = ?", newest.station(), newest.seq());
        }
    }

    /** Reads strips that count. */
    static List<Use> read(Rows rows, String condition, Object... values) {
        return rows.read("select * from strip where counts and " + condition, StripRows::use, values);
    }

    private static Use use(Row row) {
        return new Use(
                row.uuid("result"),
                new EntryRef(new StationId(row.text("station")), row.whole("seq")),
                new LotId(row.text("lot")),
                row.text("kit"),
                row.text("method"),
                row.instant("taken"),
                row.text("sample"),
                row.text("place"),
                row.optionalText("line"),
                row.optionalText("batch"),
                new PersonId(row.text("operator")),
                Coded.of(Outcome.class, row.text("outcome")),
                row.flag("sign"),
                row.optionalText("control"),
                row.flag("lot_check"));
    }
}
