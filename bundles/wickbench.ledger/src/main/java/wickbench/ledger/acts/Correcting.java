package wickbench.ledger.acts;

import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.person.PersonId;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.Strip;
import wickbench.ledger.ResultDetail;

/** The door by which results are corrected; never on the screen's thread. */
@ProviderType
public interface Correcting {

    /** Tells whether there is a bench, through whose door alone anything is corrected. */
    boolean present();

    /** Returns what was said of a strip, by the columns of a run sheet. */
    Map<String, String> said(ResultDetail result);

    /** Returns the lines of a strip as a cell of a run sheet. */
    String seen(Strip strip);

    /**
     * Says anew what was otherwise; what was said before stays.
     *
     * @param changed by the columns of a run sheet; an empty text means not stated
     * @param by a reviewer, or who read the strip
     * @throws wickbench.api.check.BadInput when nothing was otherwise, or a cell says nothing; its fields are columns
     * @throws wickbench.api.check.Refusal when a sign of allergen would be taken away, or as
     *     {@link wickbench.api.authority.Authority} says; nothing was done
     */
    Kept correct(
            ResultDetail before,
            Map<String, String> changed,
            String reason,
            PersonId by,
            Optional<Passphrase> passphrase);
}
