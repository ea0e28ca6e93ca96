package wickbench.ledger.ui.trend;

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
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.trend.Trending;

/** The ports through which the page works; none of them is asked on the UI thread. */
record TrendDoors(
        Trending trending,
        SiteFacts site,
        List<People> people,
        Permissions permissions,
        SignIn signIn,
        Optional<ChartPainter> painter) {

    /**
     * Who may freeze limits at this desk.
     *
     * @param name of who sits there, with their id
     * @param keyed whether they have a passphrase to sign with
     */
    record Rights(Optional<PersonId> actor, String name, Permission base, boolean keyed) {}

    Rights rights(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        Permission said = actor.map(who -> permissions.ask(who, Act.BASE_TREND))
                .orElseGet(() -> new Permission.Denied("desk.nobody", TrendWords.get("nobody")));
        // who has not signed in yet does so with the signature
        boolean onlyUnproved =
                said instanceof Permission.Denied denied && denied.code().equals("sign-in.needed") && keyed;
        return new Rights(
                actor, actor.map(this::name).orElse(""), onlyUnproved ? new Permission.Allowed() : said, keyed);
    }

    private String name(PersonId id) {
        Map<PersonId, String> names = new HashMap<>();
        people.forEach(port -> port.all().forEach(person -> names.put(person.id(), person.display())));
        String name = names.getOrDefault(id, id.value());
        return name.equals(id.value()) ? name : TrendWords.get("person", name, id);
    }
}
