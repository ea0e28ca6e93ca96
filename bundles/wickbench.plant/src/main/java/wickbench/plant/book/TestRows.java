package wickbench.plant.book;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.method.MethodId;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.words.Coded;
import wickbench.plant.site.Sampling;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;

/**
 * The strips that were read at places: a row for each statement of a result, of which one counts.
 *
 * <p>The newest statement counts. Once one showed allergen or a sign of it, only another that does takes its place. Run controls are
 * not samples of a place, and dilutions answer no question of the plant.
 */
final class TestRows {
    static final List<String> TABLE = List.of(
            "create table test (station varchar(32) not null, seq bigint not null, result uuid not null,"
                    + " at timestamp(3) with time zone not null, recording boolean not null, sample boolean not null, counts boolean not null,"
                    + " holds boolean not null, place varchar(200) not null, method varchar(40) not null,"
                    + " started timestamp(3) with time zone not null, outcome varchar(32) not null,"
                    + " primary key (station, seq))",
            "create index test_by_result on test (result)",
            "create index test_by_place on test (place, method, started)");

    private static final String COUNTING =
            "select result, place, method, started, outcome, holds from test where sample and counts and ";

    private TestRows() {}

    /** A result that counts. */
    record Tested(UUID result, Sampling what, Instant started, Outcome outcome, boolean holds) {
        /** Whether it says anything of the place. */
        boolean says() {
            return outcome != Outcome.INVALID || holds;
        }

        boolean negative() {
            return outcome == Outcome.NEGATIVE && !holds;
        }
    }

    /** A statement, as far as weighing goes. */
    private record Stated(String station, long seq, boolean recording, boolean holds) {}

    static boolean is(Entry entry) {
        return entry.is(RecordedReading.KIND, RecordedReading.VERSION)
                || entry.is(CorrectedReading.KIND, CorrectedReading.VERSION);
    }

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

    private static void add(Entry entry, UUID result, boolean recording, RecordedReading recorded, Rows rows) {
        boolean alone = rows.read("select seq from test where result = ?", row -> 0, result)
                .isEmpty();
        Reading reading = recorded.reading();
        boolean sample = reading.sample().control().isEmpty()
                && reading.sample().dilution().compareTo(BigDecimal.ONE) == 0;
        rows.write(
                "insert into test (station, seq, result, at, recording, sample, counts, holds, place, method, started, outcome)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                result,
                entry.at(),
                recording,
                sample,
                recording && alone,
                recorded.verdict().holds(),
                reading.sample().place(),
                reading.method().value(),
                reading.times().started().or(() -> reading.times().read()).orElse(entry.at()),
                recorded.verdict().outcome().code());
        if (!alone) {
            weigh(result, rows);
        }
    }

    private static void weigh(UUID result, Rows rows) {
        List<Stated> all = rows.read(
                "select station, seq, recording, holds from test where result = ? order by recording desc, at, station,"
                        + " seq",
                row -> new Stated(row.text("station"), row.whole("seq"), row.flag("recording"), row.flag("holds")),
                result);
        List<Stated> holding = all.stream().filter(Stated::holds).toList();
        rows.write("update test set counts = false where result = ?", result);
        if (all.stream().anyMatch(Stated::recording)) {
            List<Stated> eligible = holding.isEmpty() ? all : holding;
            Stated newest = eligible.get(eligible.size() - 1);
            rows.write("update test set counts = true where station = ? and seq = ?", newest.station(), newest.seq());
        }
    }

    static Optional<Tested> of(Rows rows, UUID result) {
        return rows.first(COUNTING + "result = ?", TestRows::tested, result);
    }

    /** Returns the first valid result at a place by a method within a time; an Invalid answers nothing. */
    static Optional<UUID> first(Rows rows, Sampling what, Instant from, Optional<Instant> before) {
        String until = before.isPresent() ? " and started < ?" : "";
        Object[] values = before.isPresent()
                ? new Object[] {what.place(), what.method().value(), from, Outcome.INVALID.code(), before.get()}
                : new Object[] {what.place(), what.method().value(), from, Outcome.INVALID.code()};
        return rows.first(
                COUNTING + "place = ? and method = ? and started >= ? and outcome <> ?" + until
                        + " order by started, result fetch first 1 rows only",
                row -> row.uuid("result"),
                values);
    }

    /** Returns the newest result at each place by each method, started by an instant. */
    static List<Tested> latest(Rows rows, Instant at) {
        return rows.read(
                "select t.result, t.place, t.method, t.started, t.outcome, t.holds from test t join (select place, method,"
                        + " max(started) as last from test where sample and counts and started <= ? group by place, method) n on t.place ="
                        + " n.place and t.method = n.method and t.started = n.last where t.sample and t.counts order by t.place, t.method,"
                        + " t.result",
                TestRows::tested,
                at);
    }

    private static Tested tested(Row row) {
        return new Tested(
                row.uuid("result"),
                new Sampling(row.text("place"), new MethodId(row.text("method"))),
                row.instant("started"),
                Coded.of(Outcome.class, row.text("outcome")),
                row.flag("holds"));
    }
}
