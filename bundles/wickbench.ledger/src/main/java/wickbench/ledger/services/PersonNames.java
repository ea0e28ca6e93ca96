package wickbench.ledger.services;

import java.util.List;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;

/**
 * Names people as a signature shows them: name and id, or the id alone where no name is known.
 *
 * @param people one, or none where people are not kept
 */
record PersonNames(List<People> people) {
    String of(PersonId id) {
        return people.stream()
                .flatMap(port -> port.find(id).stream())
                .flatMap(person -> person.name().stream())
                .findFirst()
                .map(name -> LedgerWords.get("person", name, id))
                .orElse(id.value());
    }
}
