/**
 * For which food, surface and cleaner a method was shown to work at this site, and by what.
 *
 * <p>Take the service {@link wickbench.bench.evidence.Verifications}. A gate minds a method that was shown to work for nothing yet.
 */
@Export
@Version("1.0.0")
package wickbench.bench.evidence;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
