package wickbench.plant.face;

import java.util.Optional;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.command.Terminal;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantKeeping.Actor;

/** Who acts at the terminal, having shown who they are where that is asked. */
record Hands(Terminal terminal, SignIn signIn) {

    /** Returns the actor; with a signature when they want to sign. */
    Actor actor(boolean sign) {
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
    Actor signer() {
        return actor(signIn.asked());
    }

    private Passphrase asked(PersonId who) {
        return Passphrase.of(terminal.passphrase(who.value()));
    }
}
