package wickbench.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;

/** Which recovery codes were sealed, and which were used; a row for each entry. */
@Component
public final class RecoveryView implements IndexView {
    static final String NAME = "recovery";

    @Activate
    public RecoveryView() {}

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
        return List.of(
                "create table sealed (station varchar(32) not null, seq bigint not null,"
                        + " at timestamp(3) with time zone not null, primary key (station, seq))",
                "create table used (station varchar(32) not null, seq bigint not null, code varchar(64) not null,"
                        + " primary key (station, seq))");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        String station = entry.ref().station().value();
        if (entry.is(CodeSealed.KIND, CodeSealed.VERSION)) {
            rows.write(
                    "insert into sealed (station, seq, at) values (?, ?, ?)",
                    station,
                    entry.ref().seq(),
                    entry.at());
        } else if (entry.is(Recovered.KIND, Recovered.VERSION)) {
            Recovered.read(entry.ref().toString(), entry.body())
                    .orRefuse()
                    .code()
                    .ifPresent(code -> rows.write(
                            "insert into used (station, seq, code) values (?, ?, ?)",
                            station,
                            entry.ref().seq(),
                            code.toString()));
        }
    }

    /** Returns the entry that sealed the newest code, if that was not used. */
    static Optional<EntryRef> open(Rows rows) {
        return rows.first(
                        "select station, seq from sealed order by at desc, station desc, seq desc fetch first 1 rows only",
                        row -> new EntryRef(new StationId(row.text("station")), row.whole("seq")))
                .filter(newest -> rows.first("select code from used where code = ?", row -> true, newest.toString())
                        .isEmpty());
    }
}
