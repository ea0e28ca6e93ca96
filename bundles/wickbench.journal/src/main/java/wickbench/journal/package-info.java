/**
 * The journal in plain files: what {@code docs/formats/journal.md} describes.
 *
 * <p>Exported for programs and tests that open a home without a framework; inside one, take the service
 * {@link wickbench.api.journal.Journal}.
 */
@Export
@Version("1.0.0")
package wickbench.journal;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
