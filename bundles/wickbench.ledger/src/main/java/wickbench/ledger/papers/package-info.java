/**
 * What leaves the ledger: reports, and audit packs that a stranger can verify.
 */
@Export
@Version("1.0.0")
package wickbench.ledger.papers;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
