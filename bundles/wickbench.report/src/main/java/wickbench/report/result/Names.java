package wickbench.report.result;

import java.util.List;
import java.util.Optional;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

/** How people are named on paper: name and id, or the id alone where no name is known. */
record Names(List<People> people) {

    String of(PersonId id) {
        return people.stream()
                .flatMap(some -> some.find(id).stream())
                .map(Person::name)
                .flatMap(Optional::stream)
                .findFirst()
                .map(name -> name + " (" + id + ")")
                .orElse(id.value());
    }
}
