package wickbench.stock.room;

import java.util.List;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodRef;

/** Which kit each issued version of a method is written for, from the bench's entries; a row for each. */
final class IssuedRows {
    static final String KIND = "method.issued";
    static final int VERSION = 1;

    static final String TABLE = "create table issued (station varchar(32) not null, seq bigint not null,"
            + " method varchar(64) not null, kit varchar(200) not null, primary key (station, seq))";

    private IssuedRows() {}

    static void take(Entry entry, Rows rows) {
        String source = entry.ref().toString();
        Json.Obj method = entry.body()
                .get("method")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .orElseThrow(() -> new IllegalStateException(source + " issues no method"));
        Fields fields = Fields.of(source, method);
        rows.write(
                "insert into issued (station, seq, method, kit) values (?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                fields.text("id") + " v" + fields.whole("version"),
                fields.text("kit"));
    }

    static List<String> kits(Rows rows, MethodRef method) {
        return rows.read(
                "select distinct kit from issued where method = ? order by kit",
                row -> row.text("kit"),
                method.toString());
    }
}
