/**
 * Lines, their sampling points, and where those lie on the plant's floor picture.
 *
 * <p>Points are those that the site's risk assessment names; only where a site draws points at random does statistics say how many.
 */
@Export
@Version("1.0.0")
package wickbench.plant.site;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
