package wickbench.training.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.shell.PageContext;
import wickbench.widgets.Type;

/** People to be ticked, in rows that break where the room ends. */
final class PeopleTicks {
    private final Map<PersonId, Button> ticks = new LinkedHashMap<>();

    private PeopleTicks(Composite room, PageContext context, String title, List<Person> people) {
        context.theme().controls().text(room, Type.STRONG, title);
        Composite row = context.theme().controls().row(room);
        people.forEach(person -> ticks.put(
                person.id(),
                context.theme()
                        .controls()
                        .check(
                                row,
                                person.display().equals(person.id().value())
                                        ? person.display()
                                        : TrainingUiWords.get("person", person.display(), person.id()))));
        if (people.isEmpty()) {
            context.theme().controls().text(room, Type.SMALL, TrainingUiWords.get("open.nobody"));
        }
    }

    /**
     * Lists the operators, or everybody.
     *
     * @param operators whether only who is enrolled as an operator
     */
    static PeopleTicks of(
            Composite room, PageContext context, String title, TrainingDoors.Known known, boolean operators) {
        return new PeopleTicks(
                room,
                context,
                title,
                known.people().stream()
                        .filter(person -> !operators || person.roles().contains(Role.OPERATOR))
                        .toList());
    }

    List<PersonId> chosen() {
        return ticks.entrySet().stream()
                .filter(tick -> tick.getValue().getSelection())
                .map(Map.Entry::getKey)
                .toList();
    }

    void choose(List<PersonId> people) {
        ticks.forEach((id, tick) -> tick.setSelection(people.contains(id)));
    }
}
