package wickbench.people;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.person.People;

/** Brings {@code wickbench people …}. */
@Component(property = CommandSet.NAME + "=people")
public final class PeopleCommands implements CommandSet {
    private final People people;

    @Activate
    public PeopleCommands(@Reference People people) {
        this.people = people;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new PeopleCommand(people, terminal);
    }
}
