package wickbench.console;

import java.util.Locale;
import java.util.Optional;
import wickbench.api.person.PersonId;

/** Turns the name of an account of the operating system into a person id, so that an act is never nobody's. */
final class SystemAccount {
    private static final int LONGEST = 32;

    private SystemAccount() {}

    static Optional<PersonId> person(String account) {
        String id =
                account.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]", "-").replaceFirst("^[._-]+", "");
        return id.isEmpty()
                ? Optional.empty()
                : Optional.of(new PersonId(id.substring(0, Math.min(LONGEST, id.length()))));
    }
}
