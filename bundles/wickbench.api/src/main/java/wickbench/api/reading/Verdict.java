package wickbench.api.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.method.MethodRef;

/**
 * What follows from a reading, with its reasons.
 *
 * @param sign only of an Invalid: the strip showed a sign of allergen, so it holds like a Positive until repeated
 * @param level empty when Invalid
 */
public record Verdict(
        Outcome outcome,
        boolean sign,
        List<Finding> findings,
        Optional<Level> level,
        Set<Owed> owed,
        MethodRef method) {
    public Verdict {
        findings = List.copyOf(findings);
        owed = Set.copyOf(owed);
    }

    /**
     * Tells whether the strip showed allergen or a sign of it.
     *
     * <p>Line and product are held then, unless the strip was a run control, which stands for neither.
     */
    public boolean holds() {
        return outcome.positive() || sign;
    }
}
