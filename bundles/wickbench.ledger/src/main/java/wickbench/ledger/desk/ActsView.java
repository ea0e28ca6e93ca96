package wickbench.ledger.desk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Component;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.ledger.acts.Decided;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Released;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.trend.TrendBase;

/**
 * Where the acts because of results stand in the journal: a row for each thing that an entry is about.
 *
 * <p>What they say is read from the journal, and what follows from them is reckoned when it is asked, so the order in which they
 * come does not matter.
 */
@Component
public final class ActsView implements IndexView {
    static final String NAME = "acts";

    static final String CASE = "case:";
    static final String PLAN = "plan:";
    static final String TREND = "trend:";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 4;
    }

    @Override
    public List<String> tables() {
        return List.of(
                "create table act (station varchar(32) not null, seq bigint not null, part integer not null,"
                        + " at timestamp(3) with time zone not null, kind varchar(32) not null, about varchar not null,"
                        + " primary key (station, seq, part))",
                "create index act_about on act (kind, about, at, station, seq)",
                // decisions that lost a clash
                "create table lost (by_station varchar(32) not null, by_seq bigint not null,"
                        + " station varchar(32) not null, seq bigint not null,"
                        + " primary key (by_station, by_seq, station, seq))",
                "create index lost_one on lost (station, seq)");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        // a row for each thing that an entry is about
        return Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        String claim = entry.body().canonical();
        return Decided.of(entry)
                .map(decided -> new Decision(CASE + decided.result(), claim))
                .or(() -> ReleasePlan.of(entry).map(plan -> new Decision(PLAN + plan.line(), claim)))
                .or(() -> TrendBase.of(entry)
                        .map(base -> new Decision(
                                TREND + TrendBase.scope(base.filter()), base.from() + " to " + base.to())));
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        Decided.of(entry).ifPresent(decided -> decided(entry, decided, rows));
        Outside.of(entry).ifPresent(outside -> outside(entry, outside, rows));
        ReleasePlan.of(entry).ifPresent(plan -> row(entry, 0, ReleasePlan.KIND, plan.line(), rows));
        TrendBase.of(entry).ifPresent(base -> row(entry, 0, TrendBase.KIND, TrendBase.scope(base.filter()), rows));
        Released.of(entry).ifPresent(released -> row(entry, 0, Released.KIND, about(released.subject()), rows));
        Settlement.of(entry)
                .filter(settled -> Stream.of(CASE, PLAN, TREND).anyMatch(settled.subject()::startsWith))
                .ifPresent(settled -> settled.among().stream()
                        .distinct()
                        .filter(each -> !each.equals(settled.stands()))
                        .forEach(each -> lost(entry, each, rows)));
    }

    private static void decided(Entry entry, Decided decided, Rows rows) {
        row(entry, 0, Decided.KIND, decided.result().toString(), rows);
        int part = 1;
        for (String product : decided.products().stream().distinct().toList()) {
            row(entry, part++, BATCH, product, rows);
        }
    }

    private static void outside(Entry entry, Outside outside, Rows rows) {
        int part = 0;
        for (UUID result : outside.results().stream().distinct().toList()) {
            row(entry, part++, Outside.KIND, result.toString(), rows);
        }
        if (outside.batch().isPresent()) {
            row(entry, part++, Outside.KIND, OF_BATCH + outside.batch().get(), rows);
        }
        row(entry, part, Outside.KIND, ANYTHING, rows);
    }

    /** Rows of decisions by the batches that they name. */
    static final String BATCH = "batch";

    /** Stands before a batch that an outside report speaks for; no id begins so. */
    static final String OF_BATCH = "batch ";

    /** What every outside report is about: it may name neither a result nor a batch. */
    static final String ANYTHING = "";

    static String about(Subject subject) {
        return subject.sort().code() + " " + subject.name();
    }

    private static void row(Entry entry, int part, String kind, String about, Rows rows) {
        rows.write(
                "insert into act (station, seq, part, at, kind, about) values (?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                part,
                entry.at(),
                kind,
                about);
    }

    private static void lost(Entry entry, EntryRef lost, Rows rows) {
        rows.write(
                "insert into lost (by_station, by_seq, station, seq) values (?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                lost.station().value(),
                lost.seq());
    }
}
