package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.clash.Decision;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.reading.CorrectedReading;
import wickbench.ledger.Reviewed;
import wickbench.ledger.Signed;

/**
 * Every statement of every result, of which the one by which it stands is marked; and what puts results in doubt.
 *
 * <p>The statements of a result are weighed anew whenever one comes, in the order of (at, station, seq), so the order in which
 * they come does not matter.
 */
@Component
public final class LedgerView implements IndexView {
    static final String NAME = "ledger";

    /** What ends each order; and whether the statement counts, so that counting by one column reads no row. */
    private static final String KEY = ", first_station, first_seq, counts";

    /** By each of these results can be filtered and sorted. */
    private static final List<String> SORTED = List.of(
            "sample", "place", "line", "batch", "method", "target", "lot", "operator", "outcome", "held", "reviewed");

    private static final List<String> OWN = List.of(
            "station varchar(32) not null",
            "seq bigint not null",
            "id uuid not null",
            "result uuid not null",
            "at timestamp(3) with time zone not null",
            "written_by varchar(32) not null",
            "recording boolean not null",
            "counts boolean not null",
            "held boolean not null",
            "corrections integer not null",
            "first_station varchar(32) not null",
            "first_seq bigint not null",
            "first_at timestamp(3) with time zone not null",
            "first_by varchar(32) not null",
            "signed_by varchar(32) not null",
            "signed_at timestamp(3) with time zone",
            "signed_for varchar(32) not null",
            "reviewed boolean not null",
            "reviewed_by varchar(32) not null",
            "reviewed_at timestamp(3) with time zone");

    private static final String INSERT = insert();

    @Activate
    public LedgerView() {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 6;
    }

    @Override
    public List<String> tables() {
        List<String> made = new ArrayList<>();
        made.add("create table statement (" + String.join(", ", OWN) + ", " + String.join(", ", Facts.COLUMNS)
                + ", primary key (station, seq))");
        made.add("create index by_result on statement (result)");
        made.add("create index by_id on statement (id)");
        // with the words too: whoever looks for a text reads this index and only the rows that have it
        made.add("create index by_happened on statement (happened" + KEY + ", words)");
        SORTED.forEach(column ->
                made.add("create index by_" + column + " on statement (" + column + ", happened" + KEY + ")"));
        made.add("create table unread (kind varchar(64) not null, v integer not null, entries bigint not null,"
                + " primary key (kind, v))");
        made.addAll(DoubtTables.MADE);
        made.add(ReviewTable.MADE);
        return made;
    }

    @Override
    public Set<String> subjects(Entry entry) {
        // statements are weighed by their order as it stands in the table
        return Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        return entry.kind().equals(CorrectedReading.KIND)
                ? Said.of(entry)
                        .map(said -> new Decision(
                                "result:" + said.result(), entry.body().canonical()))
                : Optional.empty();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (Said.newer(entry)) {
            countUnread(entry, rows);
        }
        Said.of(entry).ifPresentOrElse(said -> take(entry, said, rows), () -> other(entry, rows));
    }

    private static void other(Entry entry, Rows rows) {
        Reviewed.of(entry).ifPresent(review -> ReviewTable.take(entry, review, rows));
        DoubtTables.take(entry, rows);
    }

    private static void take(Entry entry, Said said, Rows rows) {
        boolean alone = rows.read("select seq from statement where result = ?", row -> 0, said.result())
                .isEmpty();
        rows.write(INSERT, values(entry, said, alone).toArray());
        ReviewTable.mark(entry.id(), rows);
        if (!alone) {
            Standing.weigh(said.result(), rows);
        }
    }

    private static List<Object> values(Entry entry, Said said, boolean alone) {
        boolean recording = said.reason().isEmpty();
        Map<String, Object> facts = Facts.of(said.reading(), entry);
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("station", entry.ref().station().value());
        values.put("seq", entry.ref().seq());
        values.put("id", entry.id());
        values.put("result", said.result());
        values.put("at", entry.at());
        values.put("written_by", entry.by().value());
        values.put("recording", recording);
        values.put("counts", recording && alone);
        // a run control stands for no line and no product
        values.put("held", facts.get("holds").equals(true) && "".equals(facts.get("control")));
        values.put("corrections", 0);
        values.put("first_station", entry.ref().station().value());
        values.put("first_seq", entry.ref().seq());
        values.put("first_at", entry.at());
        values.put("first_by", entry.by().value());
        sign(values, entry);
        values.put("reviewed", false);
        values.put("reviewed_by", "");
        values.put("reviewed_at", Optional.empty());
        values.putAll(facts);
        return names().map(values::get).toList();
    }

    private static void sign(Map<String, Object> values, Entry entry) {
        Optional<Signed> signed = Signed.under(entry);
        values.put("signed_by", signed.map(name -> name.by().value()).orElse(""));
        values.put("signed_at", signed.map(Signed::at));
        values.put("signed_for", signed.map(name -> name.meaning().code()).orElse(""));
    }

    private static void countUnread(Entry entry, Rows rows) {
        int known =
                rows.write("update unread set entries = entries + 1 where kind = ? and v = ?", entry.kind(), entry.v());
        if (known == 0) {
            rows.write("insert into unread (kind, v, entries) values (?, ?, 1)", entry.kind(), entry.v());
        }
    }

    private static String insert() {
        String columns = names().collect(Collectors.joining(", "));
        return "insert into statement (" + columns + ") values ("
                + names().map(name -> "?").collect(Collectors.joining(", ")) + ")";
    }

    private static Stream<String> names() {
        return Stream.concat(OWN.stream(), Facts.COLUMNS.stream())
                .map(column -> column.substring(0, column.indexOf(' ')));
    }
}
