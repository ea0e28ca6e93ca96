package wickbench.shell;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.SignIn;
import wickbench.api.person.PersonId;

/** Takes the desk from somebody who walked away: keys and clicks keep a sitting, and where it ends nobody acts here. */
final class IdleLock {
    private static final int LOOK_MILLIS = 15_000;

    private final Window window;
    private final Session session;
    private final Neighbours neighbours;
    private Optional<PersonId> sitting = Optional.empty();

    IdleLock(Window window, Supplies supplies) {
        this.window = window;
        this.session = supplies.session();
        this.neighbours = supplies.neighbours();
    }

    void watch(Shell shell) {
        Display display = shell.getDisplay();
        Listener seen = event -> here(signIn -> session.actor().ifPresent(signIn::seen));
        display.addFilter(SWT.KeyDown, seen);
        display.addFilter(SWT.MouseDown, seen);
        shell.addListener(SWT.Dispose, event -> {
            display.removeFilter(SWT.KeyDown, seen);
            display.removeFilter(SWT.MouseDown, seen);
        });
        session.onChange(actor -> remember());
        look(shell);
    }

    private void look(Shell shell) {
        if (!shell.isDisposed()) {
            check();
            shell.getDisplay().timerExec(LOOK_MILLIS, () -> look(shell));
        }
    }

    /** Ends the session of somebody whose sitting has ended. */
    void check() {
        boolean ended = sitting.equals(session.actor())
                && sitting.isPresent()
                && neighbours
                        .signIn()
                        .filter(signIn -> signIn.sits(sitting.get()))
                        .isEmpty();
        if (ended) {
            session.actor(Optional.empty());
            window.say(ShellWords.get("sign-in.ended"));
        }
    }

    /** Notes whether the one who acts now sits here with their passphrase. */
    void remember() {
        sitting = session.actor()
                .filter(who ->
                        neighbours.signIn().filter(signIn -> signIn.sits(who)).isPresent());
    }

    private void here(java.util.function.Consumer<SignIn> act) {
        neighbours.signIn().ifPresent(act);
    }
}
