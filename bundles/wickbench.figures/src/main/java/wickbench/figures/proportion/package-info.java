/**
 * Proportions: limits of one, differences of two, the probability of detection within and between laboratories.
 */
@Export
@Version("1.0.0")
package wickbench.figures.proportion;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
