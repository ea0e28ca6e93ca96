package wickbench.api.authority;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.journal.Draft;

/**
 * The one door that everything of weight passes before it is appended.
 *
 * <p>Where nobody is enrolled yet, everything passes. Where nobody has a passphrase yet, the role is enough. From the first
 * passphrase on, a person must also have shown who they are: by an open sitting, or by the passphrase given with the act.
 */
@ProviderType
@FunctionalInterface
public interface Authority {

    /**
     * Returns the entry as it may be appended: signed when a passphrase is given, unchanged when not.
     *
     * @param draft whose {@code by} acts
     * @throws wickbench.api.check.Refusal {@code people.unknown}, {@code people.role}, {@code sign-in.needed}, {@code sign.needed},
     *     {@code sign-in.wrong} or {@code sign-in.paused}; nothing was done
     */
    Draft authorise(Act act, Draft draft, Optional<Passphrase> passphrase);

    /** Returns the entry as it may be appended without a signature. */
    default Draft authorise(Act act, Draft draft) {
        return authorise(act, draft, Optional.empty());
    }
}
