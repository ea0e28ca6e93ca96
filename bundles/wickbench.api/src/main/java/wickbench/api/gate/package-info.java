/**
 * Gates: neighbours that may stop a test from being started, never a fact from being recorded.
 */
@Export
@Version("1.0.0")
package wickbench.api.gate;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
