package wickbench.training;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

/**
 * What the training book knows. Every method asks the index, so none may be called on the thread that paints.
 *
 * <p>Answers are as of an instant by when things were done, not by when they were written.
 */
@ProviderType
public interface Competences {

    /** Returns how a person stood to a method. */
    Competence of(PersonId person, MethodId method, Instant at);

    Matrix matrix(Instant at);

    /** Returns everything about one person as known then; empty lists where nothing is. */
    PersonRecord person(PersonId person, Instant at);

    /** Returns the terms that held at an instant. */
    Terms terms(Instant at);

    /** Returns the newest measurement of the light at each bench. */
    List<BenchLight> lights();

    /** Returns the newest test of somebody's colour vision. */
    Optional<Sight> sight(PersonId person);

    /** Returns the site's sets of questions, the newest of each name. */
    List<Questions> questions();

    /** Returns what somebody must see to, most urgent first. */
    List<Due> due(Instant now);

    /** Returns the zone by whose days terms end. */
    ZoneId zone();
}
