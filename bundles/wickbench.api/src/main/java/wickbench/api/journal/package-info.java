/**
 * The append-only, sealed journal: the truth of the house.
 *
 * <p>Every act that matters is one {@link wickbench.api.journal.Entry}. Nothing is updated or deleted; a correction is a new
 * entry that names the old one.
 */
@Export
@Version("1.0.0")
package wickbench.api.journal;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
