package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Competence;
import wickbench.widgets.Badge;
import wickbench.widgets.Facts;
import wickbench.widgets.Type;

/** How a person stands to one method, who may observe them meanwhile, and what may be done about it. */
final class Standing {
    private final PageContext context;
    private final TrainingDoors doors;
    private final TrainingDoors.Known known;
    private final Runnable grown;
    private final Runnable changed;
    private final Composite room;

    Standing(
            Composite parent,
            PageContext context,
            TrainingDoors doors,
            TrainingDoors.Known known,
            Runnable grown,
            Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.grown = grown;
        this.changed = changed;
        room = context.theme().controls().box(parent, 1);
        room.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    }

    void show(PersonId person, MethodId method) {
        for (Control old : room.getChildren()) {
            old.dispose();
        }
        Optional<Competence> cell = known.matrix().cell(person, method);
        new Badge(room, context.theme(), States.of(known.matrix(), cell));
        cell.ifPresent(this::facts);
        cell.filter(each -> !each.state().mayTest()).ifPresent(this::observers);
        cell.ifPresent(
                each -> new CompetenceActs(context, doors, known, room.getShell(), grown, changed).fill(room, each));
        room.requestLayout();
        grown.run();
    }

    private void facts(Competence cell) {
        Facts facts = new Facts(room, context.theme());
        cell.until().ifPresent(day -> facts.add(TrainingUiWords.get("file.until"), day.toString()));
        cell.untestedUntil().ifPresent(day -> facts.add(TrainingUiWords.get("file.untested"), day.toString()));
        cell.tested().ifPresent(day -> facts.add(TrainingUiWords.get("file.tested"), day.toString()));
        cell.lapse()
                .ifPresent(lapse -> facts.add(
                        TrainingUiWords.get("file.lapse"),
                        TrainingUiWords.get("lapse." + lapse.cause().code(), lapse.day())));
        cell.version()
                .ifPresent(version -> facts.add(
                        TrainingUiWords.get("file.version"), TrainingUiWords.get("of", cell.read(), version)));
        cell.why().ifPresent(why -> facts.add(TrainingUiWords.get("file.why"), why));
    }

    /** Anybody may test while somebody who may reads each strip. */
    private void observers(Competence cell) {
        List<PersonId> may = known.matrix().people().stream()
                .map(person -> person.id())
                .filter(id -> !id.equals(cell.person()))
                .filter(id -> known.matrix()
                        .cell(id, cell.method())
                        .filter(other -> other.state().mayTest())
                        .isPresent())
                .toList();
        String names = may.stream().map(known::name).collect(Collectors.joining(", "));
        context.theme()
                .controls()
                .text(
                        room,
                        Type.SMALL,
                        may.isEmpty()
                                ? TrainingUiWords.get("file.observers.none")
                                : TrainingUiWords.get("file.observers", names));
    }
}
