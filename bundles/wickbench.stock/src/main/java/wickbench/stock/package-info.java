/**
 * The stock room: kits as lists of parts, their lots, the fridges they lie in, and the equipment beside them.
 *
 * <p>{@link wickbench.stock.Stockroom} answers, as of an instant; {@link wickbench.stock.Stockkeeping} acts, each act an entry
 * with who and why; {@link wickbench.stock.Fridges} takes logger files in. Everything is folded from entries, strips from
 * {@code reading.recorded} too, so a stock room installed late knows the whole history.
 */
@Export
@Version("1.0.0")
package wickbench.stock;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
