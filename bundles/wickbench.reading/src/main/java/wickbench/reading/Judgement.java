package wickbench.reading;

import java.util.List;
import java.util.stream.Stream;
import wickbench.api.method.Method;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Verdict;

/** Judges one strip. */
public final class Judgement {
    private Judgement() {}

    /**
     * Judges a reading by its method, its own statements and its surroundings.
     *
     * <p>The same arguments always give the same verdict. No finding and no surroundings turn any outcome into Negative, and
     * nothing but a void takes a Positive away; a void keeps its sign of allergen.
     *
     * @throws IllegalArgumentException when strip and method are of different formats
     */
    public static Verdict judge(Method method, Reading reading, Surroundings around) {
        Case test = new Case(method, reading, around);
        List<Finding> findings = Rules.look(test);
        Outcome outcome = outcome(test.lines().outcome(), findings);
        boolean sign = outcome == Outcome.INVALID && test.readers().stream().anyMatch(Lines::sign);
        return new Verdict(
                outcome,
                sign,
                Stream.concat(findings.stream(), HookRule.noHookLine(test, outcome).stream())
                        .toList(),
                Levels.of(method, reading.sample(), outcome),
                Debts.of(test, outcome, sign),
                method.ref());
    }

    private static Outcome outcome(Outcome lines, List<Finding> findings) {
        boolean voided = has(findings, Severity.VOIDS);
        boolean barred = lines == Outcome.NEGATIVE && has(findings, Severity.BARS_NEGATIVE);
        return voided || barred ? Outcome.INVALID : lines;
    }

    private static boolean has(List<Finding> findings, Severity severity) {
        return findings.stream().anyMatch(finding -> finding.severity() == severity);
    }
}
