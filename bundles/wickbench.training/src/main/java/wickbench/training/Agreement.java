package wickbench.training;

import java.util.List;
import java.util.Optional;
import wickbench.api.person.PersonId;

/**
 * How the readers of a round agree with one another.
 *
 * @param kappa Fleiss' kappa over all who called every strip; absent where all is one category, or fewer than two called
 * @param ac1 Gwet's AC1 over the same
 * @param disputed near-limit strips whose experts did not agree; they are not scored
 */
public record Agreement(List<PersonId> readers, Optional<Double> kappa, Optional<Double> ac1, List<String> disputed) {
    public Agreement {
        readers = List.copyOf(readers);
        disputed = List.copyOf(disputed);
    }
}
