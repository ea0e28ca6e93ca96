package wickbench.stock.face;

import java.util.List;
import java.util.Optional;
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
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RunSheets;
import wickbench.api.report.ReportPrinter;
import wickbench.stock.Papers;
import wickbench.stock.Stockkeeping;
import wickbench.stock.Stockroom;

/** Brings {@code wickbench stock …}; reading the strips of a check needs the bench, everything else does not. */
@Component(property = CommandSet.NAME + "=stock")
public final class StockCommands implements CommandSet {
    private final Home home;
    private final SignIn signIn;
    private final Stockroom room;
    private final Stockkeeping keeping;
    private final Papers papers;
    private final List<ReportPrinter> printers;
    private final Optional<CheckSheet> sheet;

    @Activate
    public StockCommands(
            @Reference Home home,
            @Reference SignIn signIn,
            @Reference Stockroom room,
            @Reference Stockkeeping keeping,
            @Reference Papers papers,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<ReadingDoor> door,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<RunSheets> sheets) {
        this.home = home;
        this.signIn = signIn;
        this.room = room;
        this.keeping = keeping;
        this.papers = papers;
        this.printers = List.copyOf(printers);
        this.sheet = door.flatMap(found -> sheets.map(reader -> new CheckSheet(found, reader)));
    }

    @Override
    public Object commands(Terminal terminal) {
        return new StockCommand(
                new Doors(room, keeping, papers), home.clock(), new Hands(terminal, signIn), sheet, printers, terminal);
    }
}
