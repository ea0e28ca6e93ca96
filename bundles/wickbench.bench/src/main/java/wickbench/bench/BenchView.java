package wickbench.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.osgi.service.component.annotations.Component;
import wickbench.api.authority.Signature;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;

/** The bench's tables: methods in force, and which readings have ever held. */
@Component
public final class BenchView implements IndexView {
    static final String NAME = "bench";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 6;
    }

    @Override
    public List<String> tables() {
        return List.of("""
                CREATE TABLE method_version (
                    id VARCHAR(40) NOT NULL,
                    version INTEGER NOT NULL,
                    from_at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                    until_at TIMESTAMP(3) WITH TIME ZONE,
                    issued_by VARCHAR(32) NOT NULL,
                    signed BOOLEAN NOT NULL,
                    body CHARACTER VARYING NOT NULL,
                    withdrawn_by VARCHAR(32),
                    withdrawn_why CHARACTER VARYING,
                    withdrawal_signed BOOLEAN NOT NULL DEFAULT FALSE,
                    station VARCHAR(32) NOT NULL,
                    seq BIGINT NOT NULL,
                    PRIMARY KEY (id, version, station, seq))""", """
                CREATE TABLE reading (
                    id UUID NOT NULL PRIMARY KEY,
                    held BOOLEAN NOT NULL)""", ControlBook.TABLE, ControlBook.ORDER);
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return BenchSubjects.of(entry).map(Set::of).orElse(Set.of());
    }

    @Override
    public void forget(String subject, Rows rows) {
        if (subject.startsWith(BenchSubjects.METHOD)) {
            rows.write("DELETE FROM method_version WHERE id = ?", subject.substring(BenchSubjects.METHOD.length()));
        } else {
            UUID reading = UUID.fromString(subject.substring(BenchSubjects.READING.length()));
            rows.write("DELETE FROM reading WHERE id = ?", reading);
            ControlBook.forget(reading, rows);
        }
    }

    @Override
    public Set<UUID> names(Entry entry) {
        return entry.is(CorrectedReading.KIND, CorrectedReading.VERSION)
                ? Set.of(BenchSubjects.correction(entry).corrects())
                : Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        return BenchSubjects.decision(entry);
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(MethodEntries.ISSUED, MethodEntries.VERSION)) {
            issued(entry, rows);
        } else if (entry.is(MethodEntries.WITHDRAWN, MethodEntries.VERSION)) {
            withdrawn(entry, rows);
        } else if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
            said(
                    entry,
                    entry.id(),
                    RecordedReadingJson.read(entry.ref().toString(), entry.body())
                            .orRefuse(),
                    rows);
        } else if (entry.is(CorrectedReading.KIND, CorrectedReading.VERSION)) {
            CorrectedReading corrected = BenchSubjects.correction(entry);
            said(entry, corrected.corrects(), corrected.now(), rows);
        } else {
            Settlement.of(entry)
                    .filter(settled -> settled.subject().startsWith(BenchSubjects.METHOD))
                    .ifPresent(settled -> settle(settled, entry, rows));
        }
    }

    private static void issued(Entry entry, Rows rows) {
        Json.Obj method = MethodEntries.issuedMethod(entry);
        Fields fields = Fields.of(entry.ref().toString(), method);
        String id = fields.text("id");
        if (inForce(id, method.canonical(), rows)) {
            // two stations issued the same
            return;
        }
        end(id, entry, rows);
        rows.write(
                """
                INSERT INTO method_version (id, version, from_at, until_at, issued_by, signed, body, station, seq)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)""",
                id,
                fields.whole("version"),
                entry.at(),
                Optional.empty(),
                entry.by().value(),
                Signature.under(entry).signed(),
                method.canonical(),
                entry.ref().station().value(),
                entry.ref().seq());
    }

    private static boolean inForce(String id, String body, Rows rows) {
        return rows.first(
                        "SELECT version FROM method_version WHERE id = ? AND until_at IS NULL AND body = ?",
                        row -> true,
                        id,
                        body)
                .isPresent();
    }

    /** Lets the chosen version be the one in force, or none where a withdrawal was chosen. */
    private static void settle(Settlement settled, Entry entry, Rows rows) {
        String id = settled.subject().substring(BenchSubjects.METHOD.length());
        end(id, entry, rows);
        rows.write("""
                UPDATE method_version
                SET until_at = NULL, withdrawn_by = NULL, withdrawn_why = NULL, withdrawal_signed = FALSE
                WHERE id = ? AND station = ? AND seq = ?""", id, settled.stands().station().value(), settled.stands().seq());
    }

    private static void end(String id, Entry entry, Rows rows) {
        rows.write("UPDATE method_version SET until_at = ? WHERE id = ? AND until_at IS NULL", entry.at(), id);
    }

    private static void withdrawn(Entry entry, Rows rows) {
        Fields fields = Fields.of(entry.ref().toString(), entry.body());
        rows.write(
                """
                UPDATE method_version SET until_at = ?, withdrawn_by = ?, withdrawn_why = ?, withdrawal_signed = ?
                WHERE id = ? AND until_at IS NULL""",
                entry.at(),
                entry.by().value(),
                fields.text("reason"),
                Signature.under(entry).signed(),
                fields.text("method"));
    }

    private static void said(Entry entry, UUID reading, RecordedReading said, Rows rows) {
        hold(reading, said.verdict().holds(), rows);
        ControlBook.take(entry, reading, said, rows);
    }

    private static void hold(UUID reading, boolean holds, Rows rows) {
        // what once held holds on, whatever a correction says
        int known = rows.write("UPDATE reading SET held = held OR ? WHERE id = ?", holds, reading);
        if (known == 0) {
            rows.write("INSERT INTO reading (id, held) VALUES (?, ?)", reading, holds);
        }
    }

    /** Tells whether any statement of this reading ever held line and product. */
    static boolean everHeld(UUID reading, Rows rows) {
        return rows.first("SELECT held FROM reading WHERE id = ?", row -> row.flag("held"), reading)
                .orElse(false);
    }
}
