/**
 * People as the house knows them: an id that entries carry, and a name that can be forgotten.
 */
@Export
@Version("1.0.0")
package wickbench.api.person;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
