/**
 * Copies of a whole home, kept elsewhere, and the way back from one.
 */
@Export
@Version("1.0.0")
package wickbench.api.backup;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
