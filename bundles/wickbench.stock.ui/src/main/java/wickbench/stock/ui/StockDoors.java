package wickbench.stock.ui;

import java.time.InstantSource;
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
import wickbench.api.clash.Settling;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.stock.Fridges;
import wickbench.stock.Papers;
import wickbench.stock.Stockkeeping;
import wickbench.stock.Stockroom;

/** The ports through which the page works; but for the clock, none of them is asked on the UI thread. */
record StockDoors(
        Stockroom room,
        Stockkeeping keeping,
        Fridges fridges,
        Papers papers,
        InstantSource clock,
        People people,
        Permissions permissions,
        SignIn signIn,
        Settling settling,
        List<ChartPainter> painters) {

    /** Returns the first that can draw; empty where none is installed. */
    Optional<ChartPainter> painter() {
        return painters.stream().findFirst();
    }

    /** Returns who may do what here, by whoever has the desk. */
    Rights rights(Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        Map<Act, Permission> may = new HashMap<>();
        for (Act act : List.of(Act.KEEP_STOCK, Act.USE_STOCK, Act.CHECK_LOT, Act.DECIDE_STORAGE, Act.SETTLE_CLASH)) {
            may.put(act, may(actor, act, keyed));
        }
        Map<PersonId, String> names = new HashMap<>();
        people.all().forEach(person -> names.put(person.id(), person.display()));
        return new Rights(actor, keyed, may, names);
    }

    /** Who has not signed in yet does so with a signature. */
    private Permission may(Optional<PersonId> actor, Act act, boolean keyed) {
        Permission said = actor.map(who -> permissions.ask(who, act))
                .orElseGet(() -> new Permission.Denied("desk.nobody", StockUiWords.get("nobody")));
        boolean onlyUnproved = act.signed()
                && keyed
                && said instanceof Permission.Denied denied
                && denied.code().equals("sign-in.needed");
        return onlyUnproved ? new Permission.Allowed() : said;
    }
}
