package wickbench.training;

import java.util.List;
import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.figures.Limits;

/**
 * How one reader did in a round.
 *
 * @param tallies for each kind of strip that the round has, with exact limits
 * @param inside how many strips were read inside the window, of how many called
 * @param kappa Cohen's kappa against the key, absent where all is one category
 * @param ac1 Gwet's AC1 against the key
 * @param dPrime d′ of near-limit strips with a line against strips without one, log-linear correction
 * @param failures which parts of the rule were broken; passed when none was
 */
public record ReaderScore(
        PersonId reader,
        List<Tally> tallies,
        int inside,
        int called,
        Optional<Double> kappa,
        Optional<Double> ac1,
        Optional<Double> dPrime,
        List<Failure> failures) {
    public ReaderScore {
        tallies = List.copyOf(tallies);
        failures = List.copyOf(failures);
    }

    public boolean passed() {
        return failures.isEmpty();
    }

    public Optional<Tally> of(Topic topic) {
        return tallies.stream().filter(tally -> tally.topic() == topic).findFirst();
    }

    /** What is counted. */
    public enum Topic implements Coded {
        /** Near-limit strips with a line. */
        NEAR,
        /** Clear positives and hook strips. */
        CLEAR,
        /** Blanks and near-limit strips without a line. */
        WITHOUT,
        INVALID,
        /** Read inside the window. */
        WINDOW
    }

    /**
     * How many were right.
     *
     * @param share the share that was right, with exact limits (Clopper and Pearson) at 95 %
     */
    public record Tally(Topic topic, int right, int of, Limits share) {
        public int wrong() {
            return of - right;
        }
    }

    /** A part of the rule that was broken: so many mistakes where at most so many pass. */
    public record Failure(Topic topic, int wrong, int allowed) {}
}
