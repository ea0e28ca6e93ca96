package wickbench.plant.book;

import java.time.Instant;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.plant.Thing;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueState;
import wickbench.plant.programme.Excused;
import wickbench.plant.programme.Maintained;
import wickbench.plant.terms.PlantWords;

/** Records what has happened on lines, and answers for what was missed. */
record Happening(Writing writing) {
    void changed(ChangeMade change, Actor by) {
        writing.known(Thing.LINE, change.line());
        writing.known(Thing.PRODUCT, change.from());
        writing.known(Thing.PRODUCT, change.to());
        writing.past(change.at());
        writing.tell(ChangeMade.KIND, change.body(), by);
    }

    void maintained(Maintained done, Actor by) {
        writing.known(Thing.LINE, done.line());
        writing.past(done.at());
        writing.tell(Maintained.KIND, done.body(), by);
    }

    void excuse(String rule, Instant occasion, String reason, Actor by) {
        String key = rule + "@" + occasion;
        DueItem item = writing.book().due(writing.book().now()).stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow(() -> Said.wrong("RULE@TIME", "due.unknown", key));
        if (item.state() != DueState.MISSED && item.state() != DueState.OVERDUE) {
            throw Said.refused(
                    "due.not-missed",
                    key,
                    PlantWords.get("due-state." + item.state().code()));
        }
        writing.write(Act.EXCUSE_DUE, Excused.KIND, new Excused(rule, occasion, Said.reason(reason)).body(), by);
    }
}
