package wickbench.training.face;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.person.People;
import wickbench.training.Competences;
import wickbench.training.Rounds;
import wickbench.training.Training;
import wickbench.training.TrainingPapers;

/** Brings {@code wickbench training …}. */
@Component(property = CommandSet.NAME + "=training")
public final class TrainingCommands implements CommandSet {
    private final Home home;
    private final SignIn signIn;
    private final Doors doors;

    @Activate
    public TrainingCommands(
            @Reference Home home,
            @Reference SignIn signIn,
            @Reference Competences book,
            @Reference Training training,
            @Reference Rounds rounds,
            @Reference People people,
            @Reference TrainingPapers papers) {
        this.home = home;
        this.signIn = signIn;
        this.doors = new Doors(book, training, rounds, people, papers);
    }

    @Override
    public Object commands(Terminal terminal) {
        return new TrainingCommand(doors, home.clock(), new Hands(terminal, signIn), terminal);
    }
}
