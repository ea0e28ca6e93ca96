package wickbench.index;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;

/** Where each entry stands, by its id. */
final class EntryIds implements IndexView {
    static final String NAME = "entry_ids";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 1;
    }

    @Override
    public List<String> tables() {
        // two stations may have recorded the same sheet, and so the same ids
        return List.of("create table entry (id uuid not null, station varchar(32) not null, seq bigint not null,"
                + " primary key (id, station, seq))");
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        rows.write(
                "insert into entry (id, station, seq) values (?, ?, ?)",
                entry.id(),
                entry.ref().station().value(),
                entry.ref().seq());
    }

    static Optional<EntryRef> find(Rows rows, UUID id) {
        return rows.first(
                "select station, seq from entry where id = ? order by station, seq",
                row -> new EntryRef(new StationId(row.text("station")), row.whole("seq")),
                id);
    }
}
