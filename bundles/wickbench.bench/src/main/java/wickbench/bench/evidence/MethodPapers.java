package wickbench.bench.evidence;

import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.method.MethodId;
import wickbench.api.report.Report;

/** Papers about a method; reads the index, so never on the screen's thread. */
@ProviderType
public interface MethodPapers {

    /**
     * Makes the bench card of the newest version.
     *
     * @throws wickbench.api.check.BadInput when no method of that id was ever issued
     */
    Report card(MethodId id);

    /**
     * Makes the report of all that shows that a method works, in any version, with plots.
     *
     * @throws wickbench.api.check.BadInput when no method of that id was ever issued
     */
    Report evidence(MethodId id);

    /**
     * Prints as PDF.
     *
     * @throws wickbench.api.check.BadInput when the file is called otherwise, or cannot be written
     * @throws wickbench.api.check.Refusal when nothing is installed that prints PDF
     */
    void print(Report report, Path file);
}
