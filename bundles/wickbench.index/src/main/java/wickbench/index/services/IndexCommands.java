package wickbench.index.services;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;

/** Brings {@code wickbench index …}. */
@Component(property = CommandSet.NAME + "=index")
public final class IndexCommands implements CommandSet {
    private final Index index;

    @Activate
    public IndexCommands(@Reference Index index) {
        this.index = index;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new IndexCommand(index, terminal);
    }
}
