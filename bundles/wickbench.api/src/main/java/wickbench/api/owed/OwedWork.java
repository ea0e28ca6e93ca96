package wickbench.api.owed;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;

/** What is owed at this site; reads the index, so never on the screen's thread. */
@ProviderType
public interface OwedWork {

    /** Returns what is open, the oldest first. */
    List<OwedItem> open();

    /** Returns all that an entry owes or owed, done or not; of an entry that doubts results, what is open because of it. */
    List<OwedItem> of(UUID owes);

    /** Records a clean; the same again adds nothing. */
    EntryRef cleaned(CleanDone clean, PersonId by);

    /** Records what the eye said of a place; the same again adds nothing. */
    EntryRef looked(VisualCheck check, PersonId by);

    /**
     * Names the neighbours of the place that a Positive asks to be sampled again; the last word counts.
     *
     * @throws wickbench.api.check.Refusal {@code owed.unknown} when the reading owes no re-test
     */
    EntryRef neighbours(UUID reading, List<String> points, PersonId by);

    /**
     * Ends something owed by decision.
     *
     * <p>{@link Owed#DECIDE} takes the result, or the entry that doubts results: then everything is decided on that is open because
     * of it.
     *
     * @param by a reviewer or releaser who did not read the strip
     * @throws wickbench.api.check.Refusal {@code owed.unknown} when it is not open, {@code owed.own-reading} when {@code by} read the
     *     strip, or as {@link wickbench.api.authority.Authority} says
     */
    EntryRef settle(UUID owes, Owed owed, String reason, PersonId by, Optional<Passphrase> passphrase);
}
