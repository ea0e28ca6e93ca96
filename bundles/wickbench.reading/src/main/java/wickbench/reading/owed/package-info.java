/**
 * What is still owed, folded from what has happened.
 *
 * <p>Pure, and blind to the order in which facts are given: {@link wickbench.reading.owed.OwedFold} puts them in the order of
 * their times. The rules stand in {@code docs/verdicts.md}.
 */
@Export
@Version("1.0.0")
package wickbench.reading.owed;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
