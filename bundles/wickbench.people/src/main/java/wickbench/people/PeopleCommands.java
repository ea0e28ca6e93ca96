package wickbench.people;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Recovery;
import wickbench.api.authority.SignIn;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.person.People;

/** Brings {@code wickbench people …}. */
@Component(property = CommandSet.NAME + "=people")
public final class PeopleCommands implements CommandSet {
    private final People people;
    private final SignIn signIn;
    private final Credentials credentials;
    private final Recovery recovery;

    @Activate
    public PeopleCommands(
            @Reference People people,
            @Reference SignIn signIn,
            @Reference Credentials credentials,
            @Reference Recovery recovery) {
        this.people = people;
        this.signIn = signIn;
        this.credentials = credentials;
        this.recovery = recovery;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new PeopleCommand(people, signIn, credentials, recovery, terminal);
    }
}
