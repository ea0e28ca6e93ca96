package wickbench.ledger.services;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.index.Rows;

/**
 * By which of its statements a result stands.
 *
 * <p>The newest one, as a rule. Once a statement showed allergen or a sign of it, only another that does so takes its place:
 * nothing that is merely said later turns a Positive into a Negative, and the result stays held. A run control stands for no line
 * and no product, so it holds nothing.
 */
final class Standing {
    /** As if each statement stood alone, so that nothing of an earlier weighing stays. */
    private static final String ALONE =
            "update statement set counts = false, held = holds and control = '', corrections = 0,"
                    + " first_station = station, first_seq = seq, first_at = at, first_by = written_by where result = ?";

    private Standing() {}

    /** A statement as far as it matters here. */
    private record Stated(String station, long seq, Instant at, String by, boolean recording, boolean holds) {

        Stated notBefore(Instant other) {
            return at.isBefore(other) ? new Stated(station, seq, other, by, recording, holds) : this;
        }
    }

    static void weigh(UUID result, Rows rows) {
        List<Stated> statements = statements(result, rows);
        Optional<Stated> first = statements.stream().filter(Stated::recording).findFirst();
        rows.write(ALONE, result);
        // a correction may come before what it corrects, from another station; then it waits
        first.ifPresent(recorded -> mark(statements, recorded, rows));
    }

    private static void mark(List<Stated> statements, Stated first, Rows rows) {
        List<Stated> holding = statements.stream().filter(Stated::holds).toList();
        List<Stated> eligible = holding.isEmpty() ? statements : holding;
        Stated counts = eligible.get(eligible.size() - 1);
        rows.write(
                "update statement set counts = true, held = ? and control = '', corrections = ?, first_station = ?, first_seq = ?,"
                        + " first_at = ?, first_by = ? where station = ? and seq = ?",
                !holding.isEmpty(),
                statements.size() - 1,
                first.station(),
                first.seq(),
                first.at(),
                first.by(),
                counts.station(),
                counts.seq());
    }

    /** Returns recordings, then corrections, oldest first; within a station its own order rules, whatever its clock said. */
    private static List<Stated> statements(UUID result, Rows rows) {
        Map<String, Instant> latest = new HashMap<>();
        List<Stated> inOrder = new ArrayList<>();
        for (Stated each : stated(result, rows)) {
            Stated next = each.notBefore(latest.getOrDefault(each.station(), each.at()));
            latest.put(next.station(), next.at());
            inOrder.add(next);
        }
        inOrder.sort(Comparator.comparing((Stated each) -> !each.recording())
                .thenComparing(Stated::at)
                .thenComparing(Stated::station)
                .thenComparing(Stated::seq));
        return inOrder;
    }

    private static List<Stated> stated(UUID result, Rows rows) {
        return rows.read(
                "select station, seq, at, written_by, recording, holds from statement where result = ?"
                        + " order by station, seq",
                row -> new Stated(
                        row.text("station"),
                        row.whole("seq"),
                        row.instant("at"),
                        row.text("written_by"),
                        row.flag("recording"),
                        row.flag("holds")),
                result);
    }
}
