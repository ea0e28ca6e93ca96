package wickbench.plant.ui;

import java.time.ZoneId;
import java.util.Optional;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantKeeping;

/** The ports through which the page works; none of them is asked on the UI thread. */
record PlantDoors(
        PlantBook book,
        PlantKeeping keeping,
        People people,
        Permissions permissions,
        SignIn signIn,
        Attachments attachments) {

    /**
     * What the person at the desk may do about one act.
     *
     * @param name as it stands on a sheet to sign
     * @param keyed whether they have a passphrase to sign with
     * @param zone of the site, in which they type times
     */
    record May(Optional<PersonId> actor, String name, boolean keyed, Permission permission, ZoneId zone) {}

    May may(Optional<PersonId> actor, Act act) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        Permission said = actor.map(who -> permissions.ask(who, act))
                .orElseGet(() -> new Permission.Denied("desk.nobody", PlantUiWords.get("nobody")));
        // who has not signed in yet does so with a signature
        boolean onlyUnproved = act.signed()
                && keyed
                && said instanceof Permission.Denied denied
                && denied.code().equals("sign-in.needed");
        String name = actor.flatMap(people::find).map(Person::display).orElse("");
        return new May(actor, name, keyed, onlyUnproved ? new Permission.Allowed() : said, book.zone());
    }
}
