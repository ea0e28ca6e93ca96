/**
 * Commands of the command line, contributed by bundles.
 */
@Export
@Version("1.0.0")
package wickbench.api.command;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
