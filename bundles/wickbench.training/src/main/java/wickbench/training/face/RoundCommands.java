package wickbench.training.face;

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
import wickbench.api.method.Methods;
import wickbench.training.Competences;
import wickbench.training.RoundSheets;
import wickbench.training.Rounds;
import wickbench.training.TrainingPapers;

/** Brings {@code wickbench round …}; format and times come from the method where the bench is installed. */
@Component(property = CommandSet.NAME + "=round")
public final class RoundCommands implements CommandSet {
    private final Home home;
    private final SignIn signIn;
    private final RoundDoors doors;

    @Activate
    public RoundCommands(
            @Reference Home home,
            @Reference SignIn signIn,
            @Reference Rounds rounds,
            @Reference Competences book,
            @Reference RoundSheets sheets,
            @Reference TrainingPapers papers,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Methods> methods) {
        this.home = home;
        this.signIn = signIn;
        this.doors = new RoundDoors(rounds, book, sheets, papers, methods);
    }

    @Override
    public Object commands(Terminal terminal) {
        return new RoundCommand(doors, home.clock().instant(), new Hands(terminal, signIn), terminal);
    }
}
