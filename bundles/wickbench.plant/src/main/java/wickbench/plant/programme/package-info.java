/**
 * When is tested: after each changeover of a kind, every so many days, after maintenance, the first-off product.
 *
 * <p>A rule and what happened give what is due. What was missed stays until somebody answers for it.
 */
@Export
@Version("1.0.0")
package wickbench.plant.programme;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
