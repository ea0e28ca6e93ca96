/**
 * The words people read, kept in message files and never in code.
 */
@Export
@Version("1.0.0")
package wickbench.api.words;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
