/**
 * What is wrong with an input, said in one line each.
 *
 * <p>A check returns {@link wickbench.api.check.Checked}: a value, or the complaints that say where the input is wrong and
 * what was expected. A rule that says no is a {@link wickbench.api.check.Refusal}.
 */
@Export
@Version("1.0.0")
package wickbench.api.check;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
