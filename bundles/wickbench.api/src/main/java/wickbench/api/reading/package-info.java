/**
 * The language of the strip: what was seen and when, and what follows from it.
 *
 * <p>Records only; what they mean is decided in {@code wickbench.reading}, and they become entries through the one
 * {@link wickbench.api.reading.ReadingDoor}.
 */
@Export
@Version("1.0.0")
package wickbench.api.reading;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
