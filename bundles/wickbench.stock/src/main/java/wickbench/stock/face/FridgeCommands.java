package wickbench.stock.face;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.report.ReportPrinter;
import wickbench.stock.Fridges;
import wickbench.stock.Stockroom;

/** Brings {@code wickbench fridge …}. */
@Component(property = CommandSet.NAME + "=fridge")
public final class FridgeCommands implements CommandSet {
    private final Home home;
    private final SignIn signIn;
    private final Stockroom room;
    private final Fridges fridges;
    private final List<ReportPrinter> printers;

    @Activate
    public FridgeCommands(
            @Reference Home home,
            @Reference SignIn signIn,
            @Reference Stockroom room,
            @Reference Fridges fridges,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.home = home;
        this.signIn = signIn;
        this.room = room;
        this.fridges = fridges;
        this.printers = List.copyOf(printers);
    }

    @Override
    public Object commands(Terminal terminal) {
        return new FridgeCommand(fridges, room, home.clock(), new Hands(terminal, signIn), printers, terminal);
    }
}
