package wickbench.api.person;

import java.util.Optional;
import java.util.Set;

/**
 * A person enrolled at this site.
 *
 * @param name as kept in their own file; empty once they are forgotten or the file is missing
 * @param roles what they may do
 */
public record Person(PersonId id, Optional<String> name, Set<Role> roles) {
    public Person {
        roles = Set.copyOf(roles);
    }

    /** Returns the name, or the id where there is none. */
    public String display() {
        return name.orElse(id.value());
    }
}
