package wickbench.ledger.ui;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Correcting;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Reviewing;

/** The doors through which people act on results; none of them is asked on the UI thread. */
record ActDoors(
        Reviewing reviewing,
        Correcting correcting,
        Deciding deciding,
        Releasing releasing,
        SiteFacts site,
        List<People> people,
        Permissions permissions,
        SignIn signIn) {
    private static final List<Act> ASKED = List.of(
            Act.REVIEW_READING,
            Act.CORRECT_READING,
            Act.CORRECT_OWN_READING,
            Act.DECIDE_ACTION,
            Act.RELEASE,
            Act.PLAN_RELEASE);

    /**
     * What the page of releases shows, and who may act on it.
     *
     * @param open cases with something left to decide or to do, the oldest first
     */
    record Known(List<Case> open, SiteTimes times, WhoIsWho people, Rights rights) {}

    /**
     * What the person at the desk may do.
     *
     * @param actor empty when nobody has the desk
     * @param keyed whether they have a passphrase to sign with
     */
    record Rights(Optional<PersonId> actor, Map<Act, Permission> may, boolean keyed) {
        Permission to(Act act) {
            return may.get(act);
        }
    }

    Known known(Optional<PersonId> actor) {
        Map<PersonId, String> names = new HashMap<>();
        people.forEach(port -> port.all().forEach(person -> names.put(person.id(), person.display())));
        return new Known(deciding.open(), new SiteTimes(site.now().zone()), new WhoIsWho(names), rights(actor));
    }

    Rights rights(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        Map<Act, Permission> may = new EnumMap<>(Act.class);
        for (Act act : ASKED) {
            may.put(act, may(actor, act, keyed));
        }
        return new Rights(actor, may, keyed);
    }

    /** Who has not signed in yet does so with the signature. */
    private Permission may(Optional<PersonId> actor, Act act, boolean keyed) {
        Permission said = actor.map(who -> permissions.ask(who, act))
                .orElseGet(() -> new Permission.Denied("desk.nobody", LedgerUiWords.get("act.nobody")));
        boolean onlyUnproved =
                said instanceof Permission.Denied denied && denied.code().equals("sign-in.needed") && keyed;
        return onlyUnproved ? new Permission.Allowed() : said;
    }
}
