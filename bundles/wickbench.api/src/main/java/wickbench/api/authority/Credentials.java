package wickbench.api.authority;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;

/**
 * What people show to be known again; kept as Argon2id hashes in their own files, whose hash alone stands in the entry.
 *
 * <p>Every method throws {@link wickbench.api.check.Refusal} when a rule says no, and {@link wickbench.api.check.BadInput} when a
 * new secret is too weak.
 */
@ProviderType
public interface Credentials {

    /**
     * Sets one's own passphrase.
     *
     * @param now the one that holds so far, or the phrase given for once; empty for the very first
     */
    void set(PersonId who, Optional<Passphrase> now, Passphrase fresh);

    /**
     * Gives somebody a phrase for once: the first, or in place of a forgotten one. It is good for one day.
     *
     * @param by an administrator, who signs
     * @param witness anybody else with a passphrase; needed where {@code who} has one already (21 CFR 11.200(a)(3))
     */
    void reset(PersonId who, Passphrase once, Signing by, Optional<Signing> witness);

    /** Sets the PIN that goes with the id at the bench: 4 to 12 digits. */
    void pin(PersonId who, Passphrase pin, PersonId by);

    /** Sets what the badge says. */
    void badge(PersonId who, String badge, PersonId by);

    /**
     * Forgets a person: their files go, their id stays taken, the history verifies.
     *
     * @param passphrase signs it
     * @throws wickbench.api.check.Refusal {@code people.kept} while records must by rule carry the name
     */
    void forget(PersonId who, PersonId by, Optional<Passphrase> passphrase);

    /** A person and the passphrase that they sign with. */
    record Signing(PersonId who, Passphrase passphrase) {}
}
