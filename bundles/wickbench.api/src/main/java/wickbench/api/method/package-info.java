/**
 * Methods: the site's written procedure for one kit and one sample route.
 *
 * <p>A method is issued in versions and never changed; a reading carries a copy of the one it was judged by.
 */
@Export
@Version("1.0.0")
package wickbench.api.method;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
