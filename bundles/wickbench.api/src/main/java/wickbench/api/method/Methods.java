package wickbench.api.method;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Checked;
import wickbench.api.person.PersonId;

/** The methods that this site has issued. */
@ProviderType
public interface Methods {

    /** Returns the newest version of every method, withdrawn ones included, by id. */
    List<IssuedMethod> all();

    /** Returns all versions of a method, oldest first. */
    List<IssuedMethod> versions(MethodId id);

    /** Returns the version in force at an instant. */
    Optional<Method> inForce(MethodId id, Instant at);

    /** Reads a method from a file, at most 1 MB of UTF-8; issues nothing. */
    Checked<Method> read(Path file);

    /**
     * Issues a method; its version must be the next.
     *
     * @param passphrase signs it; without one it is marked unsigned for ever
     * @throws wickbench.api.check.Refusal when it is not, when {@code by} may not, or when this version is to be signed but stands
     *     unsigned already
     */
    IssuedMethod issue(Method method, PersonId by, Optional<Passphrase> passphrase);

    /** Issues a method unsigned. */
    default IssuedMethod issue(Method method, PersonId by) {
        return issue(method, by, Optional.empty());
    }

    /**
     * Withdraws a method: no new version is in force until one is issued again.
     *
     * @param passphrase signs it
     * @throws wickbench.api.check.Refusal when it is not in force, or {@code by} may not
     */
    void withdraw(MethodId id, String reason, PersonId by, Optional<Passphrase> passphrase);

    /** Withdraws a method unsigned. */
    default void withdraw(MethodId id, String reason, PersonId by) {
        withdraw(id, reason, by, Optional.empty());
    }

    /**
     * A version with its time in force.
     *
     * @param until when a newer version or a withdrawal ended it
     * @param withdrawal what ended it, if no newer version did
     */
    record IssuedMethod(
            Method method,
            Instant from,
            Optional<Instant> until,
            PersonId by,
            boolean signed,
            Optional<Withdrawal> withdrawal) {}

    /** Why a method is no longer used. */
    record Withdrawal(PersonId by, String reason, boolean signed) {}
}
