/**
 * A chart, described once and drawn on screen and on paper.
 */
@Export
@Version("1.0.0")
package wickbench.api.chart;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
