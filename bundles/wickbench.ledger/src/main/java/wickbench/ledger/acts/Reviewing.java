package wickbench.ledger.acts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** The door by which results are reviewed; reads index and journal, so never on the screen's thread. */
@ProviderType
public interface Reviewing {

    /** Returns how many results wait for a review, and how many of them are late today. */
    Waiting waiting();

    /**
     * Signs that results were looked over as they stand now, all or none.
     *
     * @param results their ids; reviewed ones are passed over
     * @param by a reviewer who neither read nor corrected any of them
     * @return the entry; empty when all were reviewed before
     * @throws wickbench.api.check.Refusal {@code review.own-reading}, {@code review.own-correction}, {@code review.unknown},
     *     {@code review.differs}, or as {@link wickbench.api.authority.Authority} says; nothing was done
     */
    Optional<EntryRef> review(
            List<UUID> results, Optional<String> remark, PersonId by, Optional<Passphrase> passphrase);

    /** Reviews that are due. */
    record Waiting(long all, long late) {}
}
