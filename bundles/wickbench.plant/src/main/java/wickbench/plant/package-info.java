/**
 * Which tests, where and when.
 *
 * <p>{@link wickbench.plant.PlantBook} answers, as of an instant; {@link wickbench.plant.PlantKeeping} acts, each act an entry with who
 * and when. Everything is folded from entries, results from {@code reading.recorded} too, so a plant installed late knows the whole
 * history.
 */
@Export
@Version("1.0.0")
package wickbench.plant;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
