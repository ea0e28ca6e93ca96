/**
 * What a strip says: from lines and times to a verdict that explains itself.
 *
 * <p>Pure: no clock, no files, no journal. {@link wickbench.reading.Judgement} judges one strip, {@link
 * wickbench.reading.RunJudgement} a run with its controls, {@link wickbench.reading.Bracket} several dilutions of one sample. A
 * verdict is made by a list of small rules, each of which may add findings; a finding can take away the right to say
 * Negative and never a sign of allergen. The tables stand in {@code docs/verdicts.md}.
 *
 * <p>The JSON forms of methods, readings and verdicts are here too; their schemas stand in {@code docs/formats/}.
 */
@Export
@Version("1.0.0")
package wickbench.reading;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
