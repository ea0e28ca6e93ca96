package wickbench.reading;

import java.util.List;
import wickbench.api.gate.Answer;

/**
 * What a verdict takes into account beside the strip itself.
 *
 * @param answers what the neighbours said as of the start; an absent one is {@link Answer.NotChecked}
 * @param controlFailed whether the run's positive control failed since the last good one
 */
public record Surroundings(List<Answer> answers, boolean controlFailed) {
    public Surroundings {
        answers = List.copyOf(answers);
    }

    /** Returns surroundings in which nobody was asked and no control failed. */
    public static Surroundings none() {
        return of(List.of());
    }

    public static Surroundings of(List<Answer> answers) {
        return new Surroundings(answers, false);
    }
}
