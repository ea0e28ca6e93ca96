package wickbench.plant.book;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.clash.Decision;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;

/**
 * What was told of the plant, and which strips were read at which places.
 *
 * <p>Rows are what entries say and nothing more; how the plant stands is folded from them when asked for, in an order of their own. So
 * the order in which entries come does not matter.
 */
@Component
public final class PlantView implements IndexView {
    public static final String NAME = "plant";

    private static final String TOLD = "create table told (station varchar(32) not null, seq bigint not null,"
            + " at timestamp(3) with time zone not null, kind varchar(64) not null, body character varying not null,"
            + " primary key (station, seq))";

    @Activate
    public PlantView() {}

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
        return Stream.of(List.of(TOLD), TestRows.TABLE, Lost.TABLE)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public Set<String> subjects(Entry entry) {
        // a row for each entry; statements of a result are weighed by their order as it stands in the table
        return Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        return Claims.of(entry);
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        Lost.take(entry, rows);
        if (TestRows.is(entry)) {
            TestRows.take(entry, rows);
        } else if (Kinds.knows(entry.kind(), entry.v())) {
            rows.write(
                    "insert into told (station, seq, at, kind, body) values (?, ?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    entry.at(),
                    entry.kind(),
                    entry.body().canonical());
        }
    }

    /** Returns what was told and stands, in order. */
    static List<Told> told(Rows rows) {
        Set<EntryRef> lost = Lost.of(rows);
        return rows.read("select station, seq, at, kind, body from told", Told::of).stream()
                .flatMap(Optional::stream)
                .filter(told -> !lost.contains(told.entry()))
                .sorted(Told.IN_ORDER)
                .toList();
    }
}
