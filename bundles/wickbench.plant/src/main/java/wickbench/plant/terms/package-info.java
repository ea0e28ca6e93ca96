/** What is said of the plant, in words: the same on the screen and on the command line. */
@Export
@Version("1.0.0")
package wickbench.plant.terms;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
