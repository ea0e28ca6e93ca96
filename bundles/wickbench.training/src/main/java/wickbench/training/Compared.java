package wickbench.training;

import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.figures.agreement.McNemar;

/**
 * One reader in two rounds on the strips that both hold.
 *
 * @param shared strips that both rounds hold and that were scored
 * @param firstOnly right in the first only
 * @param secondOnly right in the second only
 * @param test McNemar's, absent where nothing differs
 */
public record Compared(
        PersonId reader,
        String first,
        String second,
        int shared,
        int firstOnly,
        int secondOnly,
        Optional<McNemar> test) {}
