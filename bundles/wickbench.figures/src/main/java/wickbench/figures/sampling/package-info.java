/**
 * How many samples, and what a plan lets pass.
 *
 * <p>All of it holds for <em>random</em> samples only: every item (or gram) had the same chance to be taken. Samples taken where a
 * fault is expected find more than these sums say, samples taken where it is convenient find less. Chances and shares run from 0 to
 * 1. An input out of range ends with {@link wickbench.figures.NoAnswer}.
 */
@Export
@Version("1.0.0")
package wickbench.figures.sampling;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
