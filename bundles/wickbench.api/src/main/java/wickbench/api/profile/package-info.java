/**
 * What a site has decided about itself: its name, what it checks, how long it keeps.
 */
@Export
@Version("1.0.0")
package wickbench.api.profile;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
