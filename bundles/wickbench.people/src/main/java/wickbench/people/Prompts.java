package wickbench.people;

import java.util.Optional;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.person.PersonId;

/** Asks for secrets, each with whose it is. */
final class Prompts {
    private final Terminal terminal;
    private final SignIn signIn;

    Prompts(Terminal terminal, SignIn signIn) {
        this.terminal = terminal;
        this.signIn = signIn;
    }

    /** Lets the actor show who they are, where that is asked; always anew, whoever may sit at a desk of this program. */
    PersonId provenActor() {
        PersonId by = terminal.actorOrRefuse();
        if (signIn.asked()) {
            signIn.open(by, asked(by.value()));
        }
        return by;
    }

    /** Asks for a signature of the actor, where signatures are asked. */
    Optional<Passphrase> signature(PersonId by) {
        return signIn.asked() ? Optional.of(asked(by.value())) : Optional.empty();
    }

    Signing signing(PersonId who) {
        return new Signing(who, asked(who.value()));
    }

    /** Asks for the passphrase that somebody has, if any. */
    Optional<Passphrase> now(PersonId who) {
        return signIn.secretOf(who) == Secret.NONE
                ? Optional.empty()
                : Optional.of(asked(PeopleWords.get("ask.now", who)));
    }

    /** Asks for the passphrase of somebody who has an own one. */
    Optional<Passphrase> held(PersonId who) {
        return signIn.secretOf(who) == Secret.PASSPHRASE ? Optional.of(asked(who.value())) : Optional.empty();
    }

    Passphrase code() {
        return asked(PeopleWords.get("ask.code"));
    }

    /** Asks for a new secret twice, since nobody sees what they type. */
    Passphrase fresh(String key, PersonId who) {
        Passphrase fresh = asked(PeopleWords.get(key, who));
        if (!fresh.same(asked(PeopleWords.get("ask.again", who)))) {
            throw new BadInput(Complaint.of("passphrase", PeopleWords.get("ask.differs")));
        }
        return fresh;
    }

    private Passphrase asked(String prompt) {
        return Passphrase.of(terminal.passphrase(prompt));
    }
}
