/**
 * The folder that holds everything a station keeps, its clock and its source of chance.
 */
@Export
@Version("1.0.0")
package wickbench.api.home;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
