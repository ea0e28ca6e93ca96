/**
 * Samples that a programme asks for, handed to the bench so that nobody types them again.
 *
 * <p>Whoever knows what is due offers {@link wickbench.api.planned.PlannedTests}; the bench fills a run from it.
 */
@Export
@Version("1.0.0")
package wickbench.api.planned;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
