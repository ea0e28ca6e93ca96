/**
 * A report, described once and printed by whoever can print.
 */
@Export
@Version("1.0.0")
package wickbench.api.report;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
