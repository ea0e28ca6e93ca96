/**
 * The faint-line drill: strips drawn at a known contrast, shown one after the other, and the faintest line that a person sees.
 *
 * <p>Practice only: what is seen on a screen is no proof of what is seen on a strip. {@link wickbench.drill.StripPicture} draws,
 * {@link wickbench.drill.Drill} asks, {@link wickbench.drill.DrillResult} tells; {@code docs/drill.md} has the model and its sources.
 * Everything follows from a seed, so a drill can be drawn and reckoned again from its seed and its answers.
 */
@Export
@Version("1.0.0")
package wickbench.drill;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
