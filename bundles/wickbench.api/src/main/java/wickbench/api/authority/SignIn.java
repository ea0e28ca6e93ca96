package wickbench.api.authority;

import java.util.Optional;
import java.util.function.IntSupplier;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;

/**
 * Who has shown who they are.
 *
 * <p>A sitting begins with the passphrase, lives in this program only, and ends by ten idle minutes. It opens acts that ask for a
 * role; a signature asks for the passphrase each time (21 CFR 11.200(a)(1): all parts at the first of a sitting, one thereafter;
 * here the id is known from the sitting and the passphrase is that one).
 */
@ProviderType
public interface SignIn {

    /** Tells whether acts of a role ask who one is; so from the first passphrase on, for good. */
    boolean asked();

    /** Returns how a person can show who they are. */
    Secret secretOf(PersonId who);

    /** What a person has been given to show. */
    enum Secret {
        NONE,
        /** A phrase that somebody else set; good for setting one's own and nothing else. */
        ONCE,
        PASSPHRASE
    }

    /**
     * Begins a sitting.
     *
     * @throws wickbench.api.check.Refusal {@code sign-in.wrong}; {@code sign-in.paused} after five wrong ones in a row, for a time
     *     that doubles; {@code sign-in.none}; {@code sign-in.once} when the phrase must first be replaced
     */
    void open(PersonId who, Passphrase passphrase);

    /** Tells whether a person sits here. */
    boolean sits(PersonId who);

    /** Says that the person who sits here has just done something. */
    void seen(PersonId who);

    void close(PersonId who);

    /**
     * Runs a call of another program: whoever sits at this desk does not sit there, and whoever shows themself there does not sit
     * here afterwards.
     */
    int apart(IntSupplier call);

    /**
     * Names a person at the bench by what they typed or scanned; for attribution only, opens nothing.
     *
     * @param idOrBadge a person's id, or what their badge says
     * @param pin asked of those who have one, but not where a badge was scanned
     * @throws wickbench.api.check.Refusal when nobody is meant, or the PIN is wrong
     */
    PersonId atBench(String idOrBadge, Optional<Passphrase> pin);
}
