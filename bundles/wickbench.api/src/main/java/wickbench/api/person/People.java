package wickbench.api.person;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.annotation.versioning.ProviderType;

/** The people of this site. */
@ProviderType
public interface People {

    /** Returns everyone enrolled, by id. */
    List<Person> all();

    Optional<Person> find(PersonId id);

    /**
     * Enrols a person; the name goes into a salted file of its own, entries carry the id and that file's hash only.
     *
     * @param by who enrols them
     * @throws wickbench.api.check.Refusal when the id is taken
     */
    Person enrol(PersonId id, String name, Set<Role> roles, PersonId by);

    /**
     * Gives a person these roles and no others.
     *
     * @throws wickbench.api.check.Refusal when nobody has the id
     */
    Person assign(PersonId id, Set<Role> roles, PersonId by);
}
