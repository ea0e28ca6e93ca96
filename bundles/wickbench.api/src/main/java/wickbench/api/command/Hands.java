package wickbench.api.command;

import java.util.Optional;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.person.PersonId;

/** Who acts at the terminal, having shown who they are where that is asked. */
public record Hands(Terminal terminal, SignIn signIn) {

    /** Returns the actor, who sits down where people have passphrases. */
    public Actor actor() {
        return actor(false);
    }

    /** Returns the actor; with a signature when they want to sign. */
    public Actor actor(boolean sign) {
        PersonId who = terminal.actorOrRefuse();
        if (sign) {
            return new Actor(who, Optional.of(asked(who)));
        }
        if (signIn.asked()) {
            signIn.open(who, asked(who));
        }
        return Actor.of(who);
    }

    /** Returns the actor of an act that is signed wherever people have passphrases. */
    public Actor signer() {
        PersonId who = terminal.actorOrRefuse();
        return new Actor(who, signIn.asked() ? Optional.of(asked(who)) : Optional.empty());
    }

    private Passphrase asked(PersonId who) {
        return Passphrase.of(terminal.passphrase(who.value()));
    }
}
