package wickbench.plant.face;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantKeeping;

/** {@code plant}: which tests, where and when, and in which order the products. */
@Component(property = CommandSet.NAME + "=plant")
public final class PlantCommand implements CommandSet {
    private final PlantBook book;
    private final PlantKeeping keeping;
    private final SignIn signIn;

    @Activate
    public PlantCommand(@Reference PlantBook book, @Reference PlantKeeping keeping, @Reference SignIn signIn) {
        this.book = book;
        this.keeping = keeping;
        this.signIn = signIn;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Plant(new Doors(book, keeping, new Hands(terminal, signIn), terminal));
    }

    @Command(name = "plant", synopsisSubcommandLabel = "COMMAND")
    private static final class Plant extends CleanCommands {
        Plant(Doors doors) {
            super(doors);
        }
    }
}
