package wickbench.plant.book;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.plant.PlantState;
import wickbench.plant.Retired;
import wickbench.plant.Stated;

/** States what there is, each after a look at what it rests on. */
record Stating(Writing writing) {
    int state(Stated things, Actor by) {
        PlantFile.check(things);
        PlantState now = writing.now();
        StatedCheck.of(things, now);
        List<Json> known = StatedCheck.bodies(now);
        List<Draft> drafts = new ArrayList<>();
        for (Stated.Said said : things.all()) {
            // said again where stations differ, it is the word of one who knows both
            if (!known.contains(said.body()) || now.disputed(said.what(), said.id())) {
                drafts.add(writing.authority()
                        .authorise(Act.KEEP_PLANT, writing.draft(said.kind(), said.body(), by), by.passphrase()));
            }
        }
        if (!drafts.isEmpty()) {
            writing.journal().append(drafts);
        }
        return drafts.size();
    }

    void retire(Retired what, Actor by) {
        writing.known(what.what(), what.id());
        writing.write(
                Act.KEEP_PLANT,
                Retired.KIND,
                new Retired(what.what(), what.id(), Said.reason(what.reason())).body(),
                by);
    }
}
