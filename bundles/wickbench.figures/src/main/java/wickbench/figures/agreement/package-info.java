/**
 * Agreement: of readers with each other, of a method with a reference, of two methods on the same samples.
 */
@Export
@Version("1.0.0")
package wickbench.figures.agreement;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
