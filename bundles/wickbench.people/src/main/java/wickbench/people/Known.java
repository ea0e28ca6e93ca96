package wickbench.people;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/**
 * A person as the tables know them.
 *
 * @param fileFrom the entry that named the file
 * @param given the entry that gave each role
 * @param secretAt when the passphrase was set
 */
record Known(
        PersonId id,
        Hash file,
        EntryRef fileFrom,
        Map<Role, EntryRef> given,
        Secret secret,
        Optional<Instant> secretAt,
        boolean keyed,
        boolean forgotten) {

    Set<Role> roles() {
        return given.keySet();
    }

    Known only(Predicate<Role> which) {
        Map<Role, EntryRef> left = given.entrySet().stream()
                .filter(role -> which.test(role.getKey()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new Known(id, file, fileFrom, left, secret, secretAt, keyed, forgotten);
    }

    boolean is(Role role) {
        return given.containsKey(role);
    }
}
