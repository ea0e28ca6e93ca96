/**
 * Finds the order of a day's products that takes the least time for changes; needs nothing of the house.
 */
@Export
@Version("1.0.0")
package wickbench.plant.order;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
