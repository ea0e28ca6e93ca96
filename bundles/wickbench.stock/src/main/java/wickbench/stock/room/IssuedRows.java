package wickbench.stock.room;

import java.util.List;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;

/** For which kit, and by which insert, each issued version of a method is written, from the bench's entries; a row for each. */
final class IssuedRows {
    private static final String ISSUED = "method.issued";
    private static final String WITHDRAWN = "method.withdrawn";
    private static final int VERSION = 1;

    static final List<String> TABLES = List.of(
            "create table issued (station varchar(32) not null, seq bigint not null,"
                    + " at timestamp(3) with time zone not null, method varchar(64) not null, version int not null,"
                    + " kit varchar(200) not null, revision varchar(200), primary key (station, seq))",
            "create table withdrawn (station varchar(32) not null, seq bigint not null,"
                    + " at timestamp(3) with time zone not null, method varchar(64) not null,"
                    + " primary key (station, seq))");

    private IssuedRows() {}

    static boolean tells(Entry entry) {
        return entry.is(ISSUED, VERSION) || entry.is(WITHDRAWN, VERSION);
    }

    static void take(Entry entry, Rows rows) {
        if (entry.is(ISSUED, VERSION)) {
            issued(entry, rows);
        } else if (entry.is(WITHDRAWN, VERSION)) {
            rows.write(
                    "insert into withdrawn (station, seq, at, method) values (?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    entry.at(),
                    Fields.of(entry.ref().toString(), entry.body()).text("method"));
        }
    }

    private static void issued(Entry entry, Rows rows) {
        String source = entry.ref().toString();
        Json.Obj method = entry.body()
                .get("method")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .orElseThrow(() -> new IllegalStateException(source + " issues no method"));
        Fields fields = Fields.of(source, method);
        rows.write(
                "insert into issued (station, seq, at, method, version, kit, revision) values (?, ?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.at(),
                fields.text("id"),
                fields.whole("version"),
                fields.text("kit"),
                fields.optionalText("insert_revision").orElse(null));
    }

    static Inserts read(Rows rows) {
        return new Inserts(
                rows.read("select * from issued", IssuedRows::issue),
                rows.read(
                        "select method, at from withdrawn",
                        row -> new Inserts.End(new MethodId(row.text("method")), row.instant("at"))));
    }

    private static Inserts.Issue issue(Row row) {
        return new Inserts.Issue(
                new EntryRef(new StationId(row.text("station")), row.whole("seq")),
                new MethodRef(new MethodId(row.text("method")), (int) row.whole("version")),
                row.text("kit"),
                row.optionalText("revision"),
                row.instant("at"));
    }
}
