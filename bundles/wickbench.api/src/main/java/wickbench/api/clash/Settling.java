package wickbench.api.clash;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** The door through which a person settles a clash. */
@ProviderType
public interface Settling {

    /** Returns what is not settled, by subject. */
    List<Clash> open();

    /**
     * Lets a subject stand by one of the decisions that clash.
     *
     * @throws wickbench.api.check.Refusal {@code clash.none} when nothing clashes on the subject, {@code clash.other} when
     *     {@code stands} is not among the decisions, or as {@link wickbench.api.authority.Authority} says
     */
    void settle(String subject, EntryRef stands, String reason, PersonId by, Optional<Passphrase> passphrase);
}
