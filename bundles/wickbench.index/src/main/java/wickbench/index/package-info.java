/**
 * The index on H2: one file, a schema for each view.
 *
 * <p>A program takes the {@link wickbench.api.index.Index} service. {@link wickbench.index.H2Index} stands here so that whoever
 * runs without a framework, as the tests of the views do, opens the same index by hand.
 */
@Export
@Version("1.0.0")
package wickbench.index;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
