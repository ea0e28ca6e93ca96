package wickbench.training.face;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.method.Methods;
import wickbench.api.report.ReportPrinter;
import wickbench.training.Competences;
import wickbench.training.Rounds;

/** Brings {@code wickbench round …}; format and times come from the method where the bench is installed. */
@Component(property = CommandSet.NAME + "=round")
public final class RoundCommands implements CommandSet {
    private final Home home;
    private final SignIn signIn;
    private final Rounds rounds;
    private final Competences book;
    private final List<ReportPrinter> printers;
    private final Optional<Methods> methods;

    @Activate
    public RoundCommands(
            @Reference Home home,
            @Reference SignIn signIn,
            @Reference Rounds rounds,
            @Reference Competences book,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Methods> methods) {
        this.home = home;
        this.signIn = signIn;
        this.rounds = rounds;
        this.book = book;
        this.printers = List.copyOf(printers);
        this.methods = methods;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new RoundCommand(
                rounds, book, methods, home.clock().instant(), new Hands(terminal, signIn), printers, terminal);
    }
}
