/**
 * Allergens as the declared lists of Codex, the European Union and the United States name them.
 *
 * <p>Which list holds for a product is for the site and its law to say; here each list stands with its source and date.
 */
@Export
@Version("1.0.0")
package wickbench.plant.allergen;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
