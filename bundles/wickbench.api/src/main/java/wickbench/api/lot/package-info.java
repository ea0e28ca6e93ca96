/**
 * Kit lots as a reading needs them: what was true of a lot at an instant.
 */
@Export
@Version("1.0.0")
package wickbench.api.lot;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
