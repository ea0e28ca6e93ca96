/**
 * Results that can no longer be taken as they stand, because of something that became known of their lot, method or operator.
 *
 * <p>The one door for it is a member of a body, as a signature is: whoever records a rejected lot, a fridge that failed, an
 * operator who was suspended or a method that was wrong puts a {@link wickbench.api.doubt.Doubt} into the member {@code doubts}
 * of that entry, of whatever kind. Everybody who keeps results reads it there, knows nothing else of the kind, and opens a
 * decision on each Negative that is touched. So it works whichever bundle came first, and on stations that lack the other one.
 * A changed shape takes another member's name.
 */
@Export
@Version("1.0.0")
package wickbench.api.doubt;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
