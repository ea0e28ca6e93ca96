package wickbench.shell;

import java.util.Optional;
import wickbench.api.person.PersonId;

/**
 * What the page People is asked to show when somebody who signs in does not know their passphrase any more.
 *
 * @param who who forgot it
 */
public record ForgottenPassphrase(PersonId who) {
    static final String PAGE = "people";

    /** No id holds a blank, so it is never taken for one. */
    private static final String BEFORE = "forgotten ";

    /** Returns the argument that {@link PagePart#show} hears. */
    public String argument() {
        return BEFORE + who;
    }

    /** Reads such an argument; empty for every other. */
    public static Optional<ForgottenPassphrase> of(String argument) {
        return argument.startsWith(BEFORE)
                ? Optional.of(new ForgottenPassphrase(new PersonId(argument.substring(BEFORE.length()))))
                : Optional.empty();
    }
}
