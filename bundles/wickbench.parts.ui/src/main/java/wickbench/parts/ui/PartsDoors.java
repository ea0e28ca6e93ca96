package wickbench.parts.ui;

import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.part.Health;
import wickbench.api.part.PartSet;
import wickbench.api.part.Parts;
import wickbench.api.part.SelfCheck;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

/** The ports behind the page; none of them is asked on the UI thread. */
record PartsDoors(Parts parts, SelfCheck check, People people, Permissions permissions, SignIn signIn) {

    /**
     * What the page shows.
     *
     * @param signer name and id of the person at the desk; empty when nobody has it
     * @param change whether they may add and remove
     * @param keyed whether they have a passphrase to sign with
     */
    record Known(List<PartSet> sets, List<Health> health, Optional<String> signer, Permission change, boolean keyed) {}

    Known known(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        Permission said = actor.map(who -> permissions.ask(who, Act.CHANGE_PARTS))
                .orElseGet(() -> new Permission.Denied("desk.nobody", PartsUiWords.get("nobody")));
        return new Known(parts.sets(), check.look(), actor.map(this::who), asSigned(said, keyed), keyed);
    }

    /** Who has not signed in yet does so with the signature. */
    private static Permission asSigned(Permission said, boolean keyed) {
        boolean onlyUnproved = said instanceof Permission.Denied denied
                && (denied.code().equals("sign-in.needed") || denied.code().equals("sign.needed"));
        return keyed && onlyUnproved ? new Permission.Allowed() : said;
    }

    private String who(PersonId id) {
        String name = people.find(id).map(Person::display).orElseGet(id::value);
        return name.equals(id.value()) ? name : PartsUiWords.get("person", name, id);
    }
}
