package wickbench.ledger;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Signature;
import wickbench.api.journal.Entry;
import wickbench.api.person.PersonId;

/** Who put their name under a statement, when, and what for. */
public record Signed(PersonId by, Instant at, Act meaning) {

    /** Returns whose name stands under an entry; a signature that does not fit it is none. */
    public static Optional<Signed> under(Entry entry) {
        return Signature.under(entry) instanceof Signature.Standing.Signed found
                ? Optional.of(new Signed(
                        found.signature().by(),
                        found.signature().at(),
                        found.signature().meaning()))
                : Optional.empty();
    }
}
