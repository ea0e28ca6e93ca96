package wickbench.bench;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;

/** The run controls of a kit, as recorded and corrected. */
final class ControlBook {
    static final String TABLE = """
            CREATE TABLE run_control (
                reading UUID NOT NULL PRIMARY KEY,
                control VARCHAR(16) NOT NULL,
                method VARCHAR(40) NOT NULL,
                lot VARCHAR(40) NOT NULL,
                at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                positive BOOLEAN NOT NULL)""";
    static final String ORDER = "CREATE INDEX run_control_of_kit ON run_control (control, method, lot, at)";

    private static final String LAST =
            "SELECT positive FROM run_control WHERE control = 'low-positive' AND method = ? AND lot = ? AND at < ?"
                    + " ORDER BY at DESC, reading FETCH FIRST 1 ROW ONLY";

    private static final String RAN = "SELECT positive FROM run_control WHERE control = ? AND method = ? AND lot = ?"
            + " AND at >= ? AND at < ? FETCH FIRST 1 ROW ONLY";

    private final Home home;
    private final Index index;

    ControlBook(Home home, Index index) {
        this.home = home;
        this.index = index;
    }

    /** Tells whether the last low positive control before an instant was not positive; false when there was none. */
    boolean failedBefore(MethodId method, LotId lot, Instant at) {
        if (!home.isBegun()) {
            return false;
        }
        List<Boolean> last = index.read(
                BenchView.NAME, rows -> rows.read(LAST, row -> row.flag("positive"), method.value(), lot.value(), at));
        return last.contains(false);
    }

    /** Tells whether a control was run in a span, well or not: one that failed owes its own repeat. */
    boolean ran(DueControl due, Instant from, Instant until) {
        return home.isBegun()
                && index.read(
                        BenchView.NAME,
                        rows -> rows.first(
                                        RAN,
                                        row -> true,
                                        due.control().code(),
                                        due.method().value(),
                                        due.lot().value(),
                                        from,
                                        until)
                                .isPresent());
    }

    /** Takes a statement of a reading; the last one counts. */
    static void take(Entry entry, UUID reading, RecordedReading said, Rows rows) {
        forget(reading, rows);
        Reading control = said.reading();
        Optional<RunControl> kind = control.sample().control();
        if (kind.isPresent()) {
            rows.write(
                    "INSERT INTO run_control (reading, control, method, lot, at, positive) VALUES (?, ?, ?, ?, ?, ?)",
                    reading,
                    kind.get().code(),
                    control.method().value(),
                    control.lot().value(),
                    control.times().started().or(control.times()::read).orElse(entry.at()),
                    said.verdict().outcome().positive());
        }
    }

    static void forget(UUID reading, Rows rows) {
        rows.write("DELETE FROM run_control WHERE reading = ?", reading);
    }
}
