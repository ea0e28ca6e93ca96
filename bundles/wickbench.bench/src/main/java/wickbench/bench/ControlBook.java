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
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;

/** The low positive controls of a kit, as recorded and corrected. */
final class ControlBook {
    static final String TABLE = """
            CREATE TABLE low_positive (
                reading UUID NOT NULL PRIMARY KEY,
                method VARCHAR(40) NOT NULL,
                lot VARCHAR(40) NOT NULL,
                at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
                good BOOLEAN NOT NULL)""";
    static final String ORDER = "CREATE INDEX low_positive_of_kit ON low_positive (method, lot, at)";

    private static final String LAST = "SELECT good FROM low_positive WHERE method = ? AND lot = ? AND at < ?"
            + " ORDER BY at DESC, reading FETCH FIRST 1 ROW ONLY";

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
                BenchView.NAME, rows -> rows.read(LAST, row -> row.flag("good"), method.value(), lot.value(), at));
        return last.contains(false);
    }

    /** Takes a statement of a reading; the last one counts. */
    static void take(Entry entry, UUID reading, RecordedReading said, Rows rows) {
        forget(reading, rows);
        Reading control = said.reading();
        if (control.sample().control().equals(Optional.of(RunControl.LOW_POSITIVE))) {
            rows.write(
                    "INSERT INTO low_positive (reading, method, lot, at, good) VALUES (?, ?, ?, ?, ?)",
                    reading,
                    control.method().value(),
                    control.lot().value(),
                    control.times().started().or(control.times()::read).orElse(entry.at()),
                    said.verdict().outcome().positive());
        }
    }

    static void forget(UUID reading, Rows rows) {
        rows.write("DELETE FROM low_positive WHERE reading = ?", reading);
    }
}
