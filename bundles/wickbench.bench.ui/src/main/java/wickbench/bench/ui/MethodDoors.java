package wickbench.bench.ui;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.chart.ChartPainter;
import wickbench.api.method.Methods;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.bench.evidence.MethodPapers;
import wickbench.bench.evidence.Verifications;

/** The ports through which the page of the methods works; none of them is asked on the UI thread. */
record MethodDoors(
        Methods methods,
        SiteFacts site,
        People people,
        Permissions permissions,
        SignIn signIn,
        Verifications verifications,
        MethodPapers papers,
        Optional<ChartPainter> painter) {

    /** What the page shows, and who may change it. */
    record Known(List<IssuedMethod> methods, ZoneId zone, Map<PersonId, String> names, Rights rights) {
        /** Returns name and id, or the id alone where no name is known. */
        String who(PersonId id) {
            String name = names.getOrDefault(id, id.value());
            return name.equals(id.value()) ? name : BenchUiWords.get("person", name, id);
        }
    }

    /**
     * What the person at the desk may do.
     *
     * @param actor empty when nobody has the desk
     * @param keyed whether they have a passphrase to sign with
     */
    record Rights(Optional<PersonId> actor, Permission issue, Permission withdraw, Permission verify, boolean keyed) {}

    Known known(Optional<PersonId> actor) {
        Map<PersonId, String> names = new HashMap<>();
        people.all().forEach(person -> names.put(person.id(), person.display()));
        return new Known(methods.all(), site.now().zone(), names, rights(actor));
    }

    private Rights rights(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        return new Rights(
                actor,
                may(actor, Act.ISSUE_METHOD, keyed),
                may(actor, Act.WITHDRAW_METHOD, keyed),
                may(actor, Act.VERIFY_METHOD, keyed),
                keyed);
    }

    /** Who has not signed in yet does so with the signature. */
    private Permission may(Optional<PersonId> actor, Act act, boolean keyed) {
        Permission said = actor.map(who -> permissions.ask(who, act))
                .orElseGet(() -> new Permission.Denied("desk.nobody", BenchUiWords.get("methods.nobody")));
        boolean onlyUnproved =
                said instanceof Permission.Denied denied && denied.code().equals("sign-in.needed") && keyed;
        return onlyUnproved ? new Permission.Allowed() : said;
    }
}
