package wickbench.figures.commands;

import org.osgi.service.component.annotations.Component;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;

/** Brings {@code wickbench figures …}. */
@Component(property = CommandSet.NAME + "=figures")
public final class FiguresCommand implements CommandSet {
    @Override
    public Object commands(Terminal terminal) {
        return new Figures(terminal);
    }
}
