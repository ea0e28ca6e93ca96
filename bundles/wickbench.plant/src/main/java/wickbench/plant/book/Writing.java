package wickbench.plant.book;

import java.time.Instant;
import java.util.List;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantState;
import wickbench.plant.Thing;

/** Writes what is done about the plant, under a name. */
record Writing(Home home, Journal journal, Authority authority, PlantBook book) {
    PlantState now() {
        return book.at(book.now());
    }

    void known(Thing what, String id) {
        if (!now().has(what, id)) {
            throw Said.wrong(what.name(), what.code() + ".unknown", id);
        }
    }

    void past(Instant at) {
        if (at.isAfter(book.now())) {
            throw Said.wrong("--at", "time.ahead", at);
        }
    }

    Entry write(Act act, String kind, Json.Obj body, Actor by) {
        Draft draft = authority.authorise(act, draft(kind, body, by), by.passphrase());
        return journal.append(List.of(draft)).get(0);
    }

    /** What has happened is recorded, whoever says so. */
    void tell(String kind, Json.Obj body, Actor by) {
        journal.append(List.of(draft(kind, body, by)));
    }

    Draft draft(String kind, Json.Obj body, Actor by) {
        return new Draft(Draft.randomId(home.chance()), by.who(), kind, Kinds.VERSION, body);
    }
}
