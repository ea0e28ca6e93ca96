/**
 * A day as people type it: its products, and what is asked of their order.
 *
 * <p>The page and the command line read the same text in the same way and say the same when it cannot be.
 */
@Export
@Version("1.0.0")
package wickbench.plant.day;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
