/**
 * The index: tables made from the journal, thrown away and rebuilt at will.
 *
 * <p>A bundle contributes an {@link wickbench.api.index.IndexView} and asks its own tables through
 * {@link wickbench.api.index.Index}. Only the bundle behind this port knows a database.
 */
@Export
@Version("1.0.0")
package wickbench.api.index;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
