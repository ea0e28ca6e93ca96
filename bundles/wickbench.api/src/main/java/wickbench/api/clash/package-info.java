/**
 * Two decisions on one subject, made on two stations of which neither had seen the other's.
 *
 * <p>Both entries are kept. Until a person settles it, the subject stands in the most cautious state that one of them claims:
 * Positive over Negative, hold over release, the fewer roles, no method in force rather than a doubtful one.
 */
@Export
@Version("1.0.0")
package wickbench.api.clash;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
