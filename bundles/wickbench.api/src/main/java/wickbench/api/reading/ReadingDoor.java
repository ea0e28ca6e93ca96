package wickbench.api.reading;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** The one door by which readings are judged and recorded. */
@ProviderType
public interface ReadingDoor {

    /**
     * Judges without recording; the neighbours are asked as of each start.
     *
     * <p>The readings count as one run: a failed positive control among them bars the Negatives since the last good one.
     *
     * @return a judged reading each, in order
     * @throws wickbench.api.check.BadInput when a method is not issued or does not fit the strip or route
     */
    List<RecordedReading> judge(List<Reading> run);

    /** Judges and records a run, all or none; what was recorded before is not recorded twice. */
    List<Kept> record(List<Reading> run, PersonId by);

    /**
     * Records that an earlier reading should have been another.
     *
     * @param by a reviewer, or the operator of the reading, who signs
     * @param passphrase signs it
     * @throws wickbench.api.check.Refusal when there is no such reading, when allergen or its sign would be argued away, or when
     *     {@code by} may not
     */
    Kept correct(UUID corrects, Reading now, String reason, PersonId by, Optional<Passphrase> passphrase);

    /** Records a correction unsigned. */
    default Kept correct(UUID corrects, Reading now, String reason, PersonId by) {
        return correct(corrects, now, reason, by, Optional.empty());
    }

    /**
     * A reading in the journal.
     *
     * @param added false when the same reading stood there before
     */
    record Kept(EntryRef ref, UUID id, RecordedReading reading, boolean added) {}
}
