package wickbench.ledger.ui;

import java.util.Map;
import wickbench.api.person.PersonId;

/** People by name where their name is kept, and always by id. */
record WhoIsWho(Map<PersonId, String> names) {
    WhoIsWho {
        names = Map.copyOf(names);
    }

    /** Returns the name, or the id where there is none. */
    String name(PersonId id) {
        return names.getOrDefault(id, id.value());
    }

    /** Returns name and id. */
    String full(PersonId id) {
        return name(id).equals(id.value()) ? id.value() : LedgerUiWords.get("person", name(id), id);
    }
}
