package wickbench.stations;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.clash.Settling;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Stations;

/** Brings {@code wickbench station …}. */
@Component(property = CommandSet.NAME + "=station")
public final class StationCommands implements CommandSet {
    private final Journal journal;
    private final Stations stations;
    private final Index index;
    private final Settling settling;

    @Activate
    public StationCommands(
            @Reference Journal journal,
            @Reference Stations stations,
            @Reference Index index,
            @Reference Settling settling) {
        this.journal = journal;
        this.index = index;
        this.stations = stations;
        this.settling = settling;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new StationCommand(journal, stations, index, settling, terminal);
    }
}
