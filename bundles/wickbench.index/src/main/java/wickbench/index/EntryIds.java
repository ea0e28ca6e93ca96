package wickbench.index;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;

/** What the index itself keeps: where each entry stands, by its id, and what each station had seen of the others. */
final class EntryIds implements IndexView {
    static final String NAME = "entry_ids";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 2;
    }

    @Override
    public List<String> tables() {
        // two stations may have recorded the same sheet, and so the same ids
        return List.of(
                "create table entry (id uuid not null, station varchar(32) not null, seq bigint not null,"
                        + " primary key (id, station, seq))",
                Sight.TABLE);
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        return Settlement.of(entry)
                .map(settled -> new Decision(settled.subject(), Settlement.KIND + " " + settled.stands()));
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        rows.write(
                "insert into entry (id, station, seq) values (?, ?, ?)",
                entry.id(),
                entry.ref().station().value(),
                entry.ref().seq());
        Sight.take(entry, rows);
    }

    static Optional<EntryRef> find(Rows rows, UUID id) {
        return rows.first(
                "select station, seq from entry where id = ? order by station, seq",
                row -> new EntryRef(new StationId(row.text("station")), row.whole("seq")),
                id);
    }
}
