package wickbench.tally;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;

/** A row for each entry of the journal, with its kind. */
@Component
public final class TallyView implements IndexView {
    static final String NAME = "tally";

    @Activate
    public TallyView() {}

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
        return List.of("create table tally (station varchar(32) not null, seq bigint not null,"
                + " kind varchar(100) not null, primary key (station, seq))");
    }

    /** Each row comes from one entry alone, so nothing is ever folded again. */
    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        rows.write(
                "insert into tally (station, seq, kind) values (?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.kind());
    }
}
