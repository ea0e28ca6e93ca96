package wickbench.bench.owed;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.osgi.service.component.annotations.Component;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Neighbourhood;
import wickbench.api.owed.Ordered;
import wickbench.api.owed.Settled;
import wickbench.api.owed.VisualCheck;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;

/** The facts on which what is owed rests: a row for each entry that tells of one. */
@Component
public final class OwedView implements IndexView {
    static final String NAME = "owed";

    /** Stands between the names of points; no name holds it. */
    static final String BETWEEN = "\n";

    /** The columns of what is no reading. */
    private static final String OTHER =
            "INSERT INTO fact (id, kind, at, written, station, seq, target, place, line, what, points) VALUES"
                    + " (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 5;
    }

    @Override
    public List<String> tables() {
        return List.of("""
            CREATE TABLE fact (
                id UUID NOT NULL,
                kind VARCHAR(16) NOT NULL,
                at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                written TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                station VARCHAR(32) NOT NULL,
                seq BIGINT NOT NULL,
                target UUID,
                place CHARACTER VARYING,
                line CHARACTER VARYING,
                what VARCHAR(32),
                points CHARACTER VARYING,
                said CHARACTER VARYING,
                sample CHARACTER VARYING,
                method VARCHAR(40),
                lot VARCHAR(40),
                dilution NUMERIC(20, 6),
                control VARCHAR(16),
                reason VARCHAR(32),
                outcome VARCHAR(32),
                sign BOOLEAN,
                owed VARCHAR(80),
                operator VARCHAR(32),
                PRIMARY KEY (station, seq))\
            """, "CREATE INDEX by_control ON fact (control, method, lot, at)");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        // a row for each entry; what stands is reckoned when it is read
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
            RecordedReading reading = RecordedReadingJson.read(entry.ref().toString(), entry.body())
                    .orRefuse();
            TestedRow.insert(entry, entry.id(), reading, rows);
        } else if (entry.is(CorrectedReading.KIND, CorrectedReading.VERSION)) {
            CorrectedReading corrected = CorrectedReadingJson.read(entry.ref().toString(), entry.body())
                    .orRefuse();
            TestedRow.insert(entry, corrected.corrects(), corrected.now(), rows);
        } else {
            other(entry, rows);
        }
    }

    private static void other(Entry entry, Rows rows) {
        if (entry.is(CleanDone.KIND, CleanDone.VERSION)) {
            CleanDone clean = OwedBodies.clean(entry);
            insert(entry, clean.ended(), Optional.empty(), clean.place(), clean.line(), "", List.of(), rows);
        } else if (entry.is(VisualCheck.KIND, VisualCheck.VERSION)) {
            VisualCheck check = OwedBodies.check(entry);
            String result = check.result().code();
            insert(entry, check.at(), Optional.empty(), check.place(), check.line(), result, List.of(), rows);
        } else if (entry.is(Neighbourhood.KIND, Neighbourhood.VERSION)) {
            Neighbourhood named = OwedBodies.neighbours(entry);
            insert(entry, entry.at(), Optional.of(named.reading()), "", Optional.empty(), "", named.points(), rows);
        } else {
            Settled.of(entry).ifPresentOrElse(settled -> decided(entry, settled, rows), () -> told(entry, rows));
            Ordered.of(entry).ifPresent(ordered -> ordered(entry, ordered, rows));
        }
    }

    private static void told(Entry entry, Rows rows) {
        SiteRow.take(entry, rows);
        DoubtRow.take(entry, rows);
    }

    private static void decided(Entry entry, Settled settled, Rows rows) {
        String owed = settled.owed().code();
        List<String> about = settled.about().stream().map(UUID::toString).toList();
        insert(entry, entry.at(), Optional.of(settled.owes()), "", Optional.empty(), owed, about, rows);
    }

    private static void ordered(Entry entry, Ordered ordered, Rows rows) {
        String owed = ordered.owed().code();
        insert(entry, entry.at(), Optional.of(ordered.owes()), "", Optional.empty(), owed, List.of(), rows);
    }

    private static void insert(
            Entry entry,
            Instant at,
            Optional<UUID> target,
            String place,
            Optional<String> line,
            String what,
            List<String> points,
            Rows rows) {
        rows.write(
                OTHER,
                entry.id(),
                entry.kind(),
                at,
                entry.at(),
                entry.ref().station().value(),
                entry.ref().seq(),
                target,
                place,
                line,
                what,
                String.join(BETWEEN, points));
    }
}
