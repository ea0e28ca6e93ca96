package wickbench.bench.evidence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.figures.sums.KeptSums.Kept;

/** What methods were verified for; reads the index, so never on the screen's thread. */
@ProviderType
public interface Verifications {

    /** Returns all that was ever said of any version of a method, oldest first. */
    List<Verified> of(MethodId method);

    /** Returns what shows it, in the order in which it was named. */
    List<Shown> shown(Verified verified);

    /** Returns the sums that were kept at this site, the newest first, and might show something; none where no figures are kept. */
    List<Kept> kept();

    /**
     * Says that a version of a method was shown to work for something; a new version asks for it anew.
     *
     * @param passphrase signs it
     * @throws wickbench.api.check.BadInput when nothing is named that it works for, when nothing shows it, or an entry named as
     *     evidence is none
     * @throws wickbench.api.check.Refusal when the version was never issued, or {@code by} may not
     */
    EntryRef verify(Verification what, PersonId by, Optional<Passphrase> passphrase);

    /**
     * Ends one of them, for example because the recipe of the cleaner has changed.
     *
     * @throws wickbench.api.check.Refusal when there is none by that entry, it has ended, or {@code by} may not
     */
    void end(EntryRef verified, String reason, PersonId by, Optional<Passphrase> passphrase);

    /** One of them, with its entry. */
    record Verified(
            EntryRef entry, Verification what, Instant at, PersonId by, boolean signed, Optional<Ended> ended) {}

    /** Why it no longer holds, and since when. */
    record Ended(Instant at, PersonId by, String reason) {}
}
