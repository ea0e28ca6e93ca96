/**
 * What is owed after a reading until it is done: repeats, dilutions, holds, re-cleans, re-tests.
 *
 * <p>A verdict proposes ({@link wickbench.api.reading.Owed}); here stands what of it is still open, and what answered it. It is
 * folded from entries and nothing else, so it is the same whatever the order in which they came.
 */
@Export
@Version("1.0.0")
package wickbench.api.owed;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
