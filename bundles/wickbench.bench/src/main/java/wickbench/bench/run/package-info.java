/**
 * A run of strips under way: what has happened to each, how long it has truly run, and what rings next.
 *
 * <p>No windows. What happens is told to a {@link wickbench.bench.run.Run} as a {@link wickbench.bench.run.RunEvent}; it is forced to the disk before it counts, so that a run
 * is brought back as it was after a crash or a power cut. Time passes by a clock that nobody can set ({@link
 * wickbench.bench.run.Moment}); the clock on the wall is kept beside it.
 */
@Export
@Version("1.0.0")
package wickbench.bench.run;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
