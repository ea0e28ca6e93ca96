package wickbench.demo;

import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.journal.Journal;
import wickbench.api.method.Methods;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.People;
import wickbench.api.reading.ReadingDoor;

/** Brings {@code demo} to the command line. */
@Component(property = {CommandSet.NAME + "=demo", CommandSet.ALONE + "=true"})
public final class DemoCommands implements CommandSet {
    private final Doors doors;

    @Activate
    public DemoCommands(
            @Reference Home home,
            @Reference Journal journal,
            @Reference People people,
            @Reference Methods methods,
            @Reference ReadingDoor readings,
            @Reference OwedWork owed,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Attachments> attachments) {
        this.doors = new Doors(home, journal, people, methods, readings, owed, attachments);
    }

    @Override
    public Object commands(Terminal terminal) {
        return new DemoCommand(doors, terminal);
    }
}
