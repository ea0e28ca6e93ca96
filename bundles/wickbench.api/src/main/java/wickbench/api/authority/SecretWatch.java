package wickbench.api.authority;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;

/** Tells at once what somebody should look into about passphrases (21 CFR 11.300(b), (d)). */
@ProviderType
@FunctionalInterface
public interface SecretWatch {

    /** Returns what there is now, most urgent first. */
    List<Notice> now();

    /** One thing to look into. */
    sealed interface Notice {

        /**
         * So many wrong ones in a row that nothing is heard for a while.
         *
         * @param who empty where nobody has the ids that were tried
         */
        record Guessed(Optional<PersonId> who, int failures, Instant until) implements Notice {}

        /** A passphrase that the site profile lets hold until the end of this day; it may be past. */
        record Ending(PersonId who, LocalDate last) implements Notice {}
    }
}
