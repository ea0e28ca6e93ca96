package wickbench.ledger.papers;

import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.report.Report;
import wickbench.api.report.ReportSource;
import wickbench.ledger.Filter;

/** Reports over results; reads index and journal, so never on the screen's thread. */
@ProviderType
public interface Papers extends ReportSource {

    /** Makes the report of all results that pass a filter, with their corrections, and what was decided because of them. */
    Report results(Filter filter);

    /** Makes the test report of a batch: what was tested, what stands, may it go; and everything that {@link #results} tells. */
    Report batch(String name, Filter filter);

    /**
     * Prints a report in the form that the file's ending names: .pdf, .xlsx, .jsonl or .csv.
     *
     * @throws wickbench.api.check.BadInput when it is another, or the file cannot be written
     */
    void print(Report report, Path file);
}
