package wickbench.training.face;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.person.People;
import wickbench.api.report.ReportPrinter;
import wickbench.training.Competences;
import wickbench.training.Rounds;
import wickbench.training.Training;

/** Brings {@code wickbench training …}. */
@Component(property = CommandSet.NAME + "=training")
public final class TrainingCommands implements CommandSet {
    private final Home home;
    private final SignIn signIn;
    private final Doors doors;
    private final List<ReportPrinter> printers;

    @Activate
    public TrainingCommands(
            @Reference Home home,
            @Reference SignIn signIn,
            @Reference Competences book,
            @Reference Training training,
            @Reference Rounds rounds,
            @Reference People people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.home = home;
        this.signIn = signIn;
        this.doors = new Doors(book, training, rounds, people);
        this.printers = List.copyOf(printers);
    }

    @Override
    public Object commands(Terminal terminal) {
        return new TrainingCommand(doors, home.clock(), new Hands(terminal, signIn), printers, terminal);
    }
}
