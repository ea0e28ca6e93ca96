package wickbench.stock.ui;

import java.util.Map;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;

/**
 * What the person at the desk may do.
 *
 * @param actor empty when nobody has the desk
 * @param keyed whether they have a passphrase to sign with
 * @param names of everybody known by name
 */
record Rights(Optional<PersonId> actor, boolean keyed, Map<Act, Permission> permissions, Map<PersonId, String> names) {
    Rights {
        permissions = Map.copyOf(permissions);
        names = Map.copyOf(names);
    }

    Permission may(Act act) {
        return permissions.get(act);
    }

    /** Returns who acts; only asked for what is allowed. */
    Actor by() {
        return Actor.of(actor.orElseThrow());
    }

    /** Returns name and id, or the id alone where no name is known. */
    String who(PersonId id) {
        String name = names.getOrDefault(id, id.value());
        return name.equals(id.value()) ? name : StockUiWords.get("person", name, id);
    }
}
