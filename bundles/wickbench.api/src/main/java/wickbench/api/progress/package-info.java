/**
 * Long work that says how far it is and can be stopped.
 */
@Export
@Version("1.0.0")
package wickbench.api.progress;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
