package wickbench.reading;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import wickbench.api.gate.Answer;
import wickbench.api.method.Method;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Verdict;

/**
 * Judges the strips of a run together, with its controls.
 *
 * <p>In order of start, a low positive control whose outcome is not positive bars every Negative of the same method and lot
 * back to the last good one and on to the next good one. A failed blank bars nothing: it never cancels a Positive.
 */
public final class RunJudgement {
    private RunJudgement() {}

    /**
     * A strip of the run with what it is judged by.
     *
     * @param answers what the neighbours said as of the start
     */
    public record Unjudged(Method method, Reading reading, List<Answer> answers) {
        public Unjudged {
            answers = List.copyOf(answers);
        }

        Verdict judge(boolean controlFailed) {
            return Judgement.judge(method, reading, new Surroundings(answers, controlFailed));
        }
    }

    /** Returns the verdicts in the order of {@code run}. */
    public static List<Verdict> judge(List<Unjudged> run) {
        return judge(run, strip -> false);
    }

    /**
     * Returns the verdicts in the order of {@code run}, which follows other runs.
     *
     * @param shadowed tells of a strip whether the last low positive control of its kit before it, in an earlier run, had failed
     */
    public static List<Verdict> judge(List<Unjudged> run, Predicate<Unjudged> shadowed) {
        List<Verdict> alone = run.stream().map(strip -> strip.judge(false)).toList();
        Set<Integer> barred = new Controls(run, alone).barred(shadowed);
        return IntStream.range(0, run.size())
                .mapToObj(i -> barred.contains(i) ? run.get(i).judge(true) : alone.get(i))
                .toList();
    }
}
