/**
 * Trend charts: points, limits, and what they signal.
 *
 * <p>Points are numbered from 1, in the order of time. A chart says that a process changed, never why; its limits come from the
 * process itself and have nothing to do with what is allowed. An input out of range ends with {@link wickbench.figures.NoAnswer}.
 */
@Export
@Version("1.0.0")
package wickbench.figures.trend;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
