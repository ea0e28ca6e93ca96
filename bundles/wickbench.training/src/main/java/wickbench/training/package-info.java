/**
 * Training: who may read strips by which method, and how they have shown it.
 *
 * <p>{@link wickbench.training.Competences} answers, as of an instant; {@link wickbench.training.Training} acts on one person's
 * competence, each act an entry with who and why; {@link wickbench.training.Rounds} holds blind rounds. Everything is folded from
 * entries, how long somebody has not tested from {@code reading.recorded} too, so a training book begun late knows the whole
 * history.
 */
@Export
@Version("1.0.0")
package wickbench.training;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
