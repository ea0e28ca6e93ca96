package wickbench.training.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.chart.ChartPainter;
import wickbench.api.home.Home;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.training.Competences;
import wickbench.training.Drills;
import wickbench.training.Matrix;
import wickbench.training.Rounds;
import wickbench.training.Training;

/** The ports through which the page works; none of them is asked on the UI thread. */
record TrainingDoors(
        Home home,
        Competences competences,
        Training training,
        Rounds rounds,
        Drills drills,
        People people,
        Permissions permissions,
        SignIn signIn,
        Optional<ChartPainter> painter) {

    /** What the page shows, and who may change it. */
    record Known(Matrix matrix, ZoneId zone, Map<PersonId, String> names, Rights rights) {
        String name(PersonId id) {
            return names.getOrDefault(id, id.value());
        }

        /** Returns name and id, or the id alone where no name is known. */
        String who(PersonId id) {
            String name = name(id);
            return name.equals(id.value()) ? name : TrainingUiWords.get("person", name, id);
        }
    }

    /**
     * What the person at the desk may do.
     *
     * @param actor empty when nobody has the desk
     * @param keyed whether they have a passphrase to sign with
     */
    record Rights(Optional<PersonId> actor, Permission authorise, Permission suspend, boolean keyed) {}

    Instant now() {
        return home.clock().instant();
    }

    Known known(Optional<PersonId> actor) {
        Map<PersonId, String> names = new HashMap<>();
        people.all().forEach(person -> names.put(person.id(), person.display()));
        return new Known(competences.matrix(now()), competences.zone(), names, rights(actor));
    }

    private Rights rights(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        return new Rights(
                actor, may(actor, Act.AUTHORISE_OPERATOR, keyed), may(actor, Act.SUSPEND_OPERATOR, keyed), keyed);
    }

    /** Who has not signed in yet does so with the signature. */
    private Permission may(Optional<PersonId> actor, Act act, boolean keyed) {
        Permission said = actor.map(who -> permissions.ask(who, act))
                .orElseGet(() -> new Permission.Denied("desk.nobody", TrainingUiWords.get("desk.nobody")));
        boolean onlyUnproved =
                said instanceof Permission.Denied denied && denied.code().equals("sign-in.needed") && keyed;
        return onlyUnproved ? new Permission.Allowed() : said;
    }
}
