package wickbench.api.authority;

import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;

/** Tells beforehand who may do what, so that a button can be disabled and say why. */
@ProviderType
@FunctionalInterface
public interface Permissions {

    /** Returns whether a person has a role for an act and has shown who they are. */
    Permission ask(PersonId by, Act act);
}
