package wickbench.ledger.acts;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** The door by which lines and batches are released; never on the screen's thread. */
@ProviderType
public interface Releasing {

    /** Returns how a line or batch stands now. */
    Standing standing(Subject subject);

    /** Returns what is planned, by line. */
    List<ReleasePlan> plans();

    /**
     * Says what a line asks for before it is released.
     *
     * @param by a reviewer
     */
    EntryRef plan(ReleasePlan plan, PersonId by, Optional<Passphrase> passphrase);

    /**
     * Lets a line or batch go.
     *
     * @param by a releaser who read none of its strips
     * @throws wickbench.api.check.Refusal with the code of the first rule that says no and a line for each, or as
     *     {@link wickbench.api.authority.Authority} says; nothing was done
     */
    EntryRef release(Subject subject, String reason, PersonId by, Optional<Passphrase> passphrase);
}
