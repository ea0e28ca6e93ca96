package wickbench.parts;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.part.Parts;
import wickbench.api.part.SelfCheck;
import wickbench.parts.kept.HomeSets;

/** Brings {@code wickbench feature …}. */
@Component(property = CommandSet.NAME + "=feature")
public final class FeatureCommands implements CommandSet {
    private final Parts parts;
    private final SelfCheck check;
    private final HomeSets kept;
    private final SignIn signIn;

    @Activate
    public FeatureCommands(
            @Reference Parts parts, @Reference SelfCheck check, @Reference HomeSets kept, @Reference SignIn signIn) {
        this.parts = parts;
        this.check = check;
        this.kept = kept;
        this.signIn = signIn;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new FeatureCommand(parts, check, kept.product(), new Hands(terminal, signIn), new PartsPrint(terminal));
    }
}
