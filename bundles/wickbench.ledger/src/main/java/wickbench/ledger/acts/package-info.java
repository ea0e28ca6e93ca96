/**
 * What is done because of results: reviews, decisions about what they concern, releases.
 *
 * <p>Take the services {@link wickbench.ledger.acts.Reviewing}, {@link wickbench.ledger.acts.Deciding} and
 * {@link wickbench.ledger.acts.Releasing}. Whatever they refuse, they refuse below every page and command.
 */
@Export
@Version("1.0.0")
package wickbench.ledger.acts;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
