/** What is made, and the allergens in it with the form they come in. */
@Export
@Version("1.0.0")
package wickbench.plant.product;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
