package wickbench.people.ui;

import java.util.List;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.Recovery;
import wickbench.api.authority.SignIn;
import wickbench.api.journal.Journal;
import wickbench.api.person.People;

/** The ports through which the page works. */
record PeopleDoors(
        People people,
        SignIn signIn,
        Credentials credentials,
        Recovery recovery,
        Permissions permissions,
        Journal journal) {

    /** Reads everyone; not on the UI thread. */
    List<PersonRow> rows() {
        return people.all().stream()
                .map(person -> new PersonRow(person, signIn.secretOf(person.id())))
                .toList();
    }
}
