package wickbench.shell;

import java.util.Optional;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.Person;

/**
 * Lets somebody take the desk.
 *
 * <p>Who has a passphrase is asked for it. Who has none is believed, since they can do nothing but put their id under facts.
 */
final class SignInActs {
    private final Window window;
    private final Session session;
    private final Neighbours neighbours;
    private final PageJobs jobs;

    SignInActs(Window window, Supplies supplies, PageJobs jobs) {
        this.window = window;
        this.session = supplies.session();
        this.neighbours = supplies.neighbours();
        this.jobs = jobs;
    }

    void choose(Person person) {
        Optional<SignIn> signIn = neighbours.signIn();
        if (signIn.isEmpty()) {
            session.actor(Optional.of(person.id()));
            return;
        }
        jobs.run(
                ShellWords.get("work.people"),
                progress -> signIn.get().secretOf(person.id()) == Secret.PASSPHRASE,
                asks -> {
                    if (asks) {
                        ask(person, signIn.get());
                    } else {
                        session.actor(Optional.of(person.id()));
                    }
                });
    }

    void leave() {
        session.actor().ifPresent(who -> neighbours.signIn().ifPresent(signIn -> signIn.close(who)));
        session.actor(Optional.empty());
    }

    private void ask(Person person, SignIn signIn) {
        new SignInSheet(
                        window,
                        person.display(),
                        (typed, sheet) -> hear(person, signIn, typed, sheet),
                        forgotten(person))
                .open(window);
    }

    private Optional<Runnable> forgotten(Person person) {
        String argument = new ForgottenPassphrase(person.id()).argument();
        return window.has(ForgottenPassphrase.PAGE)
                ? Optional.of(() -> window.show(ForgottenPassphrase.PAGE, Optional.of(argument)))
                : Optional.empty();
    }

    private void hear(Person person, SignIn signIn, Passphrase typed, SignInSheet sheet) {
        jobs.run(
                ShellWords.get("work.sign-in"),
                progress -> {
                    try (typed) {
                        signIn.open(person.id(), typed);
                    }
                    return person.id();
                },
                who -> {
                    sheet.close();
                    session.actor(Optional.of(who));
                },
                failure -> sheet.refuse(failure.getMessage()));
    }
}
