/**
 * How results go over time: the first tests after a clean, week by week, point by point.
 *
 * <p>Take the service {@link wickbench.ledger.trend.Trending}; the charts are those of {@code wickbench.figures}.
 */
@Export
@Version("1.0.0")
package wickbench.ledger.trend;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
