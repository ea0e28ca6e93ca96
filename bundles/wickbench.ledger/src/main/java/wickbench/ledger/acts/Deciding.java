package wickbench.ledger.acts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** The door by which people decide what is done because of results; never on the screen's thread. */
@ProviderType
public interface Deciding {
    /** How many reports of other laboratories are listed. */
    int MOST_REPORTS = 100;

    /** Returns a result with all that was decided because of it; empty when there is no such result. */
    Optional<Case> of(UUID result);

    /** Returns what is open, the oldest first. */
    List<Case> open();

    /**
     * Decides.
     *
     * @param by a reviewer or releaser who did not read the strip; to release, a releaser
     * @return the entry {@code action.decided}; what is owed from then on, or no longer, is recorded with it
     * @throws wickbench.api.check.Refusal with the code of the first rule that says no and a line for each, or as
     *     {@link wickbench.api.authority.Authority} says; nothing was done
     */
    EntryRef decide(Wish wish, PersonId by, Optional<Passphrase> passphrase);

    /**
     * Returns what other laboratories reported, the newest first.
     *
     * @param most how many at most, such as {@value #MOST_REPORTS} for a page
     */
    List<Entry> outside(int most);

    /** Records what another laboratory found; the same again adds nothing. */
    EntryRef reported(Outside outside, PersonId by);

    /**
     * What somebody wants to decide.
     *
     * @param products which batches; none means all that the case is about
     */
    record Wish(UUID result, Move move, List<String> products, String reason, Optional<String> cause) {
        public Wish {
            products = List.copyOf(products);
        }
    }
}
