package wickbench.api.authority;

import java.util.Optional;
import wickbench.api.person.PersonId;

/** Who acts, and what they sign with if they do. */
public record Actor(PersonId who, Optional<Passphrase> passphrase) {
    public static Actor of(PersonId who) {
        return new Actor(who, Optional.empty());
    }
}
