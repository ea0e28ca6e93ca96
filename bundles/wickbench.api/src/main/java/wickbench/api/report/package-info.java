/**
 * A report, described once and printed by whoever can print.
 *
 * <p>{@link wickbench.api.report.Csv} and {@link wickbench.api.report.FormulaGuard} are the one way in which tables leave the
 * house for a spreadsheet.
 */
@Export
@Version("1.0.0")
package wickbench.api.report;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
