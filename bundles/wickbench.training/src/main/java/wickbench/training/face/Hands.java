package wickbench.training.face;

import java.util.Optional;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.command.Terminal;
import wickbench.api.person.PersonId;
import wickbench.training.Actor;

/** Who acts at the terminal, having shown who they are where that is asked. */
final class Hands {
    private final Terminal terminal;
    private final SignIn signIn;

    Hands(Terminal terminal, SignIn signIn) {
        this.terminal = terminal;
        this.signIn = signIn;
    }

    /** Returns the actor, who sits down where people have passphrases. */
    Actor actor() {
        PersonId who = terminal.actorOrRefuse();
        if (signIn.asked()) {
            signIn.open(who, asked(who));
        }
        return Actor.of(who);
    }

    /** Returns the actor of an act that is signed wherever people have passphrases. */
    Actor signer() {
        PersonId who = terminal.actorOrRefuse();
        return new Actor(who, signIn.asked() ? Optional.of(asked(who)) : Optional.empty());
    }

    private Passphrase asked(PersonId who) {
        return Passphrase.of(terminal.passphrase(who.value()));
    }
}
