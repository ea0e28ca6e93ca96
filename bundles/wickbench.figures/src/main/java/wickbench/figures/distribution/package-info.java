/**
 * Distributions to nearly all digits of a double: tails also as logarithms, quantiles refined on the logarithm of the tail.
 *
 * <p>Small tails are computed as such, never as one minus a large one, and keep their digits down to 1e-300.
 */
@Export
@Version("1.0.0")
package wickbench.figures.distribution;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
