package wickbench.ledger.services;

import java.util.List;
import java.util.UUID;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.owed.Settled;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.ledger.InDoubt;

/**
 * What puts Negatives in doubt, what ends that for later strips, and what was decided: a row for each thing that entries say.
 *
 * <p>Which results are touched is asked of these tables when results are read, so neither the order of entries nor which bundle
 * was here first matters. The rows are few beside the results.
 */
final class DoubtTables {
    static final List<String> MADE = List.of(
            "create table doubt (station varchar(32) not null, seq bigint not null, part integer not null,"
                    + " id uuid not null, at timestamp(3) with time zone not null, cause varchar(64) not null,"
                    + " lot varchar(40), method varchar(40), operator varchar(32),"
                    + " since timestamp(3) with time zone, ends timestamp(3) with time zone,"
                    + " primary key (station, seq, part))",
            "create table trusted (station varchar(32) not null, seq bigint not null, doubt uuid not null,"
                    + " since timestamp(3) with time zone not null, primary key (station, seq, doubt))",
            "create index trusted_doubt on trusted (doubt)",
            "create table decided (station varchar(32) not null, seq bigint not null, result uuid not null,"
                    + " doubt uuid not null, primary key (station, seq, result, doubt))",
            "create index decided_on on decided (result, doubt)");

    /**
     * Whether a doubt {@code d} touches a row of {@code statement}.
     *
     * <p>A control stands for no line and no product. Of several words that a doubt ended the last counts, the more cautious.
     */
    private static final String TOUCHES = "statement.outcome = 'negative' and statement.control = ''"
            + " and (d.lot is null or d.lot = statement.lot)"
            + " and (d.method is null or d.method = statement.method)"
            + " and (d.operator is null or d.operator = statement.operator)"
            + " and (d.since is null or d.since <= statement.happened)"
            + " and (d.ends is null or d.ends > statement.happened)"
            + " and coalesce(statement.happened < (select max(t.since) from trusted t where t.doubt = d.id), true)";

    /** Whether a row of {@code statement} waits for a decision. */
    static final String OPEN = "exists (select 1 from doubt d where " + TOUCHES
            + " and not exists (select 1 from decided c where c.result = statement.result and c.doubt = d.id))";

    private DoubtTables() {}

    static void take(Entry entry, Rows rows) {
        Settled.of(entry)
                .filter(settled -> settled.owed() == Owed.DECIDE)
                .ifPresent(settled -> decided(entry, settled, rows));
        String source = entry.ref().toString();
        List<Doubt> doubts = Doubt.in(source, entry.body());
        for (int part = 0; part < doubts.size(); part++) {
            doubt(entry, part, doubts.get(part), rows);
        }
        Trust.in(source, entry.body()).ifPresent(trust -> trusted(entry, trust, rows));
    }

    private static void doubt(Entry entry, int part, Doubt doubt, Rows rows) {
        rows.write(
                "insert into doubt (station, seq, part, id, at, cause, lot, method, operator, since, ends)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                part,
                entry.id(),
                entry.at(),
                doubt.cause(),
                doubt.lot().map(LotId::value),
                doubt.method().map(MethodId::value),
                doubt.operator().map(PersonId::value),
                doubt.from(),
                doubt.to());
    }

    private static void trusted(Entry entry, Trust trust, Rows rows) {
        trust.doubts().stream()
                .distinct()
                .forEach(doubt -> rows.write(
                        "insert into trusted (station, seq, doubt, since) values (?, ?, ?, ?)",
                        entry.ref().station().value(),
                        entry.ref().seq(),
                        doubt,
                        trust.from()));
    }

    /** A decision names a result and a doubt, whichever of the two it is filed under; so both ways are kept. */
    private static void decided(Entry entry, Settled settled, Rows rows) {
        settled.about().stream()
                .distinct()
                .filter(about -> !about.equals(settled.owes()))
                .forEach(about -> {
                    pair(entry, settled.owes(), about, rows);
                    pair(entry, about, settled.owes(), rows);
                });
    }

    private static void pair(Entry entry, UUID result, UUID doubt, Rows rows) {
        rows.write(
                "insert into decided (station, seq, result, doubt) values (?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                result,
                doubt);
    }

    /** Returns what touches a result as it stands, oldest first. */
    static List<InDoubt> of(UUID result, Rows rows) {
        return rows.read(
                "select distinct d.station, d.seq, d.id, d.at, d.cause from doubt d join statement on " + TOUCHES
                        + " where statement.counts and statement.result = ?"
                        + " order by d.at, d.station, d.seq, d.cause",
                row -> new InDoubt(
                        ref(row),
                        row.uuid("id"),
                        row.text("cause"),
                        row.instant("at"),
                        decisions(result, row.uuid("id"), rows)),
                result);
    }

    private static List<EntryRef> decisions(UUID result, UUID doubt, Rows rows) {
        return rows.read(
                "select station, seq from decided where result = ? and doubt = ? order by station, seq",
                DoubtTables::ref,
                result,
                doubt);
    }

    private static EntryRef ref(Row row) {
        return new EntryRef(new StationId(row.text("station")), row.whole("seq"));
    }
}
