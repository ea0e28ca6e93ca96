/**
 * Cleans, and whether each was shown to work on its line: worst case, three consecutive passes, visual first.
 *
 * <p>Three consecutive cleans are common practice, no source.
 */
@Export
@Version("1.0.0")
package wickbench.plant.clean;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
