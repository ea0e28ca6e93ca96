package wickbench.people.ui;

import java.util.TreeSet;
import java.util.stream.Collectors;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.Person;
import wickbench.api.person.Role;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** A person with what they can show. */
record PersonRow(Person person, Secret secret) {

    String roles() {
        return new TreeSet<>(person.roles()).stream().map(PersonRow::word).collect(Collectors.joining(", "));
    }

    Mark mark() {
        return switch (secret) {
            case PASSPHRASE -> new Mark(PeopleUiWords.get("secret.passphrase"), Shape.RING, Meaning.CALM);
            case ONCE -> new Mark(PeopleUiWords.get("secret.once"), Shape.TRIANGLE, Meaning.CAUTION);
            case NONE -> new Mark(PeopleUiWords.get("secret.none"), Shape.BAR, Meaning.NEUTRAL);
        };
    }

    static String word(Role role) {
        return PeopleUiWords.get("role." + role.code());
    }
}
