package wickbench.training.book;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.drill.Drill;
import wickbench.training.DrillRun;
import wickbench.training.Drilled;
import wickbench.training.Drills;

/** Keeps drills as entries and reads them again. */
@Component
public final class DrillBook implements Drills {
    private final Book book;
    private final Pen pen;

    @Activate
    public DrillBook(@Reference Book book, @Reference Pen pen) {
        this.book = book;
        this.pen = pen;
    }

    @Override
    public long seed() {
        // entries hold numbers of at most 15 digits
        return pen.home().chance().nextInt(Integer.MAX_VALUE);
    }

    @Override
    public Drilled keep(DrillRun run, Actor by) {
        Drill drill = run.drill();
        if (!drill.over()) {
            throw Said.wrong("answers", "drill.unfinished", run.answers().size());
        }
        if (drill.answers().size() < run.answers().size()) {
            throw Said.wrong(
                    "answers",
                    "drill.over",
                    drill.answers().size(),
                    run.answers().size());
        }
        Json.Obj body = DrillJson.write(run, drill.result(), by.who(), book.now());
        Entry kept = pen.write(Act.CALL_STRIPS, Kinds.DRILLED, body, by);
        return DrillJson.read(kept.ref(), kept.body());
    }

    @Override
    public List<Drilled> of(PersonId person) {
        return book.told("kind = ? and person = ?", Kinds.DRILLED, person.value()).stream()
                .map(told -> DrillJson.read(told.entry(), told.body()))
                .toList();
    }
}
