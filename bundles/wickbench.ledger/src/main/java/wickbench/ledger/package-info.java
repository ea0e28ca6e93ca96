/**
 * Results as they stand now, with their history: what a list, a detail side or a report asks for.
 *
 * <p>Take the service {@link wickbench.ledger.Results}. It reads the entries {@code reading.recorded} and
 * {@code reading.corrected}, whoever wrote them.
 */
@Export
@Version("1.0.0")
package wickbench.ledger;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
