package wickbench.training;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.api.person.PersonId;

/** Keeps drills with faint lines: practice between blind rounds, which changes nobody's competence. */
@ProviderType
public interface Drills {

    /** Returns a seed for a new drill; each as likely as the next. */
    long seed();

    /**
     * Keeps a drill of who acts. What it found is reckoned here from the answers.
     *
     * @throws wickbench.api.check.BadInput when it is not over, or has answers after its end
     * @throws wickbench.api.check.Refusal when who acts may not
     */
    Drilled keep(DrillRun run, Actor by);

    /** Returns the drills of a person, oldest first. Asks the index: not for the thread that paints. */
    List<Drilled> of(PersonId person);
}
