package wickbench.bench.verify;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.index.IndexView;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.bench.evidence.Verification;

/** Which entries say what methods were verified for, and which end one; nothing here is ever changed. */
@Component
public final class EvidenceView implements IndexView {
    static final String NAME = "evidence";
    static final String ENDED = "method.verification-ended";

    @Activate
    public EvidenceView() {}

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
        return List.of("""
                CREATE TABLE verified (
                    station VARCHAR(32) NOT NULL,
                    seq BIGINT NOT NULL,
                    method VARCHAR(40) NOT NULL,
                    version INTEGER NOT NULL,
                    at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                    what CHARACTER VARYING NOT NULL,
                    PRIMARY KEY (station, seq))""", """
                CREATE INDEX verified_by_method ON verified (method, version)""", """
                CREATE TABLE ended (
                    station VARCHAR(32) NOT NULL,
                    seq BIGINT NOT NULL,
                    verified VARCHAR(60) NOT NULL,
                    at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                    PRIMARY KEY (station, seq))""", """
                CREATE INDEX ended_by_verified ON ended (verified, at)""");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(Verification.KIND, Verification.VERSION)) {
            Verification what =
                    Verification.read(entry.ref().toString(), entry.body()).orRefuse();
            rows.write(
                    "INSERT INTO verified (station, seq, method, version, at, what) VALUES (?, ?, ?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    what.method().id().value(),
                    what.method().version(),
                    entry.at(),
                    what.what());
        } else if (entry.is(ENDED, Verification.VERSION)) {
            rows.write(
                    "INSERT INTO ended (station, seq, verified, at) VALUES (?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    Fields.of(entry.ref().toString(), entry.body()).text("verified"),
                    entry.at());
        }
    }

    static List<EntryRef> of(MethodId method, Rows rows) {
        return rows.read(
                "SELECT station, seq FROM verified WHERE method = ? ORDER BY at, station, seq",
                EvidenceView::ref,
                method.value());
    }

    /** Returns the first entry that ended it. */
    static Optional<EntryRef> end(EntryRef verified, Rows rows) {
        return rows.first(
                "SELECT station, seq FROM ended WHERE verified = ? ORDER BY at, station, seq",
                EvidenceView::ref,
                verified.toString());
    }

    /** Returns the entries by which a version was verified at an instant. */
    static List<EntryRef> standing(MethodRef method, Instant at, Rows rows) {
        return rows.read("""
                SELECT station, seq FROM verified WHERE method = ? AND version = ? AND at <= ? AND NOT EXISTS (
                    SELECT 1 FROM ended WHERE ended.verified = verified.station || ':' || verified.seq
                    AND ended.at <= ?)
                ORDER BY at, station, seq""", EvidenceView::ref, method.id().value(), method.version(), at, at);
    }

    private static EntryRef ref(Row row) {
        return new EntryRef(new StationId(row.text("station")), row.whole("seq"));
    }
}
