package wickbench.api.authority;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.person.PersonId;

/**
 * The way back where the last administrator is lost, or forgot their passphrase (21 CFR 11.300(c)).
 *
 * <p>Either somebody with a passphrase witnesses, once no administrator has recorded anything for three days; or a recovery code
 * is fetched, which an administrator sealed before. Both make somebody an administrator with a phrase for once, and put a
 * checkpoint signed with this station's key into the entry.
 *
 * <p>Every method throws {@link wickbench.api.check.Refusal} when a rule says no, and {@link wickbench.api.check.BadInput} when
 * the phrase is too weak.
 */
@ProviderType
public interface Recovery {

    /** Tells whether a recovery code is sealed that nobody has used. */
    boolean sealed();

    /**
     * Makes a recovery code; the one before opens nothing any more.
     *
     * @param by an administrator, who signs
     * @return the code, 125 bits in groups of letters and digits; shown this once and kept as a hash only
     */
    String seal(Signing by);

    /**
     * Makes somebody an administrator before a witness.
     *
     * @param witness anybody else with a passphrase
     */
    void byWitness(PersonId who, Passphrase once, Signing witness, String reason);

    /**
     * Makes somebody an administrator by the sealed code, which is spent then.
     *
     * @param witness anybody else; needed unless nobody else is enrolled
     */
    void byCode(PersonId who, Passphrase once, Passphrase code, Optional<Witness> witness, String reason);

    /**
     * Who stands by.
     *
     * @param passphrase theirs; empty when they have none, which is allowed only where nobody but an administrator has one
     */
    record Witness(PersonId who, Optional<Passphrase> passphrase) {}
}
