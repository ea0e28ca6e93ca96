package wickbench.figures.commands;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.figures.sums.KeptSum;

/** Which entries hold a kept sum; what is in them stands in the journal. */
@Component
public final class KeptView implements IndexView {
    static final String NAME = "figures";

    @Activate
    public KeptView() {}

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
                "create table kept (station varchar(32) not null, seq bigint not null,"
                        + " at timestamp(3) with time zone not null, primary key (station, seq))",
                "create index by_time on kept (at, station, seq)");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(KeptSum.KIND, KeptSum.VERSION)) {
            rows.write(
                    "insert into kept (station, seq, at) values (?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    entry.at());
        }
    }

    static List<EntryRef> newest(Rows rows, int most) {
        return rows.read(
                "select station, seq from kept order by at desc, station desc, seq desc fetch first " + most
                        + " rows only",
                row -> new EntryRef(new StationId(row.text("station")), row.whole("seq")));
    }
}
