package wickbench.training;

import java.time.Instant;
import java.util.List;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;

/**
 * A trainer watched somebody test by a method.
 *
 * @param remark in the trainer's words; may be empty
 */
public record Observation(PersonId person, MethodId method, Route route, Instant at, List<Step> steps, String remark) {
    public Observation {
        steps = List.copyOf(steps);
    }

    /** One critical step of the procedure. */
    public record Step(String text, Mark mark) {}

    /** How a step went. */
    public enum Mark implements Coded {
        DONE,
        /** Done once the trainer had said so. */
        PROMPTED,
        MISSED
    }

    /** Tells whether every step was done, none of them prompted. */
    public boolean passed() {
        return steps.stream().allMatch(step -> step.mark() == Mark.DONE);
    }
}
