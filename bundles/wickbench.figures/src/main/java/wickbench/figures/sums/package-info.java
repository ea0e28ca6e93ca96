/**
 * Sums: each question with what it asks, how it is answered, and what there is to say about the answer.
 *
 * <p>A {@link wickbench.figures.sums.Sum} is described once; the command line, the page and what is kept in the journal all follow
 * from that one description. It takes texts and tables as people give them ({@link wickbench.figures.sums.Given}) and gives a
 * {@link wickbench.figures.sums.Reckoned}: an answer with its formula, source, cautions and plots, or one complaint that names the
 * input. Nothing here reads a file, asks a clock or keeps a state.
 */
@Export
@Version("1.0.0")
package wickbench.figures.sums;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
