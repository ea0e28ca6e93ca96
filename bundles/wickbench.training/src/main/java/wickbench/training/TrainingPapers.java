package wickbench.training;

import java.nio.file.Path;
import java.time.Instant;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.chart.Chart;
import wickbench.api.report.Report;

/** What the training book says on paper, and what the page draws of it. Nothing here may be called on the thread that paints. */
@ProviderType
public interface TrainingPapers {

    Report matrix(Matrix matrix);

    /** Returns everything about one person, on a time line. */
    Report person(PersonRecord record);

    /**
     * Returns what one person may do as of an instant.
     *
     * @throws wickbench.api.check.Refusal when that is nothing
     */
    Report certificate(PersonRecord record, Instant at);

    /** Returns what was asked, what was called, what it came to; no call and no key before the key is opened. */
    Report round(Round round);

    /** Draws what happened to one person when, a row for each kind. */
    Chart timeLine(PersonRecord record);

    /**
     * Prints a report into a file, whole or not at all; the form follows from the ending of its name.
     *
     * @throws wickbench.api.check.BadInput when the ending is none of {@code .pdf}, {@code .csv}, {@code .xlsx}, {@code .jsonl}, or
     *     the file cannot be written
     */
    void print(Report report, Path out);
}
