/**
 * Seeing: how well a reader tells a line from none, and procedures that find the faintest line a reader sees.
 *
 * <p>The procedures are values that are stepped: each answer gives the next state, so that a page can stop, keep and go on.
 */
@Export
@Version("1.0.0")
package wickbench.figures.seeing;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
