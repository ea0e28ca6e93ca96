package wickbench.training.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.chart.ChartPainter;
import wickbench.api.home.Home;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.training.Competences;
import wickbench.training.Drills;
import wickbench.training.Matrix;
import wickbench.training.Training;
import wickbench.training.TrainingPapers;

/** The ports through which the page works; none of them is asked on the UI thread. */
record TrainingDoors(
        Home home,
        Competences competences,
        Training training,
        BlindDoors blind,
        TrainingPapers papers,
        Drills drills,
        People people,
        Permissions permissions,
        SignIn signIn,
        Optional<ChartPainter> painter) {

    /** What the page shows, and who may change it. */
    record Known(Matrix matrix, ZoneId zone, List<Person> people, Rights rights) {
        String name(PersonId id) {
            return people.stream()
                    .filter(person -> person.id().equals(id))
                    .findFirst()
                    .map(Person::display)
                    .orElse(id.value());
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
     * @param keep whether they may hold rounds
     * @param keyed whether they have a passphrase to sign with
     */
    record Rights(
            Optional<PersonId> actor,
            Permission authorise,
            Permission suspend,
            Permission keep,
            Permission score,
            boolean keyed) {}

    Instant now() {
        return home.clock().instant();
    }

    Known known(Optional<PersonId> actor) {
        return new Known(competences.matrix(now()), competences.zone(), people.all(), rights(actor));
    }

    private Rights rights(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        return new Rights(
                actor,
                may(actor, Act.AUTHORISE_OPERATOR, keyed),
                may(actor, Act.SUSPEND_OPERATOR, keyed),
                // this is not signed, so one has to have signed in for it
                may(actor, Act.KEEP_TRAINING, false),
                may(actor, Act.SCORE_ROUND, keyed),
                keyed);
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
