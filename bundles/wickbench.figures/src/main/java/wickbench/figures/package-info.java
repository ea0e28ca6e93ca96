/**
 * Figures: the statistics behind decisions, exact, pure, each with its formula and published source.
 *
 * <p>A package a topic. Functions take numbers and give records; nothing here reads a file, asks a clock or keeps a state. Where
 * there is no answer (a negative count, more positives than tests, a fit that does not exist) a function ends with
 * {@link wickbench.figures.NoAnswer}, which names the input and the reason; it never returns a number instead, and never NaN.
 * Probabilities and confidence levels are fractions between 0 and 1, never per cent.
 */
@Export
@Version("1.0.0")
package wickbench.figures;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
