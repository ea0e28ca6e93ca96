/**
 * Detection studies: from levels, tests and positives to the curve of detection and the limits read from it.
 *
 * <p>A level of 0 is a blank: it tells about false positives and stays out of the regression, where its dose has no logarithm and,
 * on a linear dose, would bend the curve to chance (CLSI EP17-A2 leaves it out as well). A scale with levels below 0 is already a
 * logarithm and has no blank.
 */
@Export
@Version("1.0.0")
package wickbench.figures.detection;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
