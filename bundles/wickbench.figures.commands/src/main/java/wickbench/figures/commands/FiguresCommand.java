package wickbench.figures.commands;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.figures.sums.KeptSums;

/** Brings {@code wickbench figures …}. */
@Component(property = CommandSet.NAME + "=figures")
public final class FiguresCommand implements CommandSet {
    private final KeptSums kept;

    @Activate
    public FiguresCommand(@Reference KeptSums kept) {
        this.kept = kept;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Figures(kept, terminal);
    }
}
