package wickbench.api.profile;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** The profiles that this site has issued; the newest holds. */
@ProviderType
public interface Profiles extends SiteProfile {

    /** Returns all, oldest first. */
    List<IssuedProfile> all();

    /**
     * Issues a profile.
     *
     * @param passphrase signs it; asked wherever people have passphrases
     * @throws wickbench.api.check.Refusal when {@code by} may not
     */
    IssuedProfile issue(Profile profile, PersonId by, Optional<Passphrase> passphrase);

    /** A profile with the entry that issued it. */
    record IssuedProfile(Profile profile, EntryRef entry, Instant from, PersonId by, boolean signed) {}
}
