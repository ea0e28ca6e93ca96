package wickbench.api.method;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
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

    /**
     * Issues a method; its version must be the next.
     *
     * @throws wickbench.api.check.Refusal when it is not
     */
    IssuedMethod issue(Method method, PersonId by);

    /**
     * Withdraws a method: no new version is in force until one is issued again.
     *
     * @throws wickbench.api.check.Refusal when it is not in force
     */
    void withdraw(MethodId id, String reason, PersonId by);

    /**
     * A version with its time in force.
     *
     * @param until when a newer version or a withdrawal ended it
     */
    record IssuedMethod(Method method, Instant from, Optional<Instant> until, PersonId by, boolean signed) {}
}
