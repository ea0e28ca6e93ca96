package wickbench.api.report;

import java.time.LocalDate;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;
import wickbench.api.words.Coded;

/** Makes reports over many records; fulfilled by the bundle that keeps them, absent where it is not installed. */
@ConsumerType
@FunctionalInterface
public interface ReportSource {

    /** What a report is of. */
    enum Of implements Coded {
        DAY,
        LINE,
        MONTH,
        BATCH
    }

    /**
     * Which report.
     *
     * @param name a day such as 2026-03-05, a month such as 2026-03, or the name of a line or batch
     * @param from the first day of it, in the site's time zone
     * @param to the last day, included
     */
    record Wanted(Of of, String name, Optional<LocalDate> from, Optional<LocalDate> to) {}

    /**
     * Makes a report; reads the index, so never asked on the UI thread.
     *
     * @throws wickbench.api.check.BadInput when the name is no day or month
     */
    Report report(Wanted wanted);
}
