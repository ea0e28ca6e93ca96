package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

class IdleLockTest {
    private static final PersonId ADA = new PersonId("ada");
    private static final PersonId BO = new PersonId("bo");

    @Test
    void whereASittingEndsNobodyActsAnyMore() {
        try (OpenDesk desk = new OpenDesk(places())) {
            HeldSitting sitting = new HeldSitting(ADA, new AtomicBoolean(true));
            desk.supplies().neighbours().signIn(sitting);
            IdleLock lock = new IdleLock(desk.window(), desk.supplies());
            lock.watch(desk.window().shell());
            desk.session().actor(Optional.of(ADA));
            lock.check();
            assertThat(desk.session().actor()).contains(ADA);
            sitting.held().set(false);
            lock.check();
            assertThat(desk.session().actor()).isEmpty();
        }
    }

    @Test
    void whoHasNoPassphraseKeepsTheDeskSinceItOpensNothing() {
        try (OpenDesk desk = new OpenDesk(places())) {
            desk.supplies().neighbours().signIn(new HeldSitting(ADA, new AtomicBoolean(true)));
            IdleLock lock = new IdleLock(desk.window(), desk.supplies());
            lock.watch(desk.window().shell());
            desk.session().actor(Optional.of(BO));
            lock.check();
            assertThat(desk.session().actor()).contains(BO);
        }
    }

    @Test
    void whoHasAPassphraseIsAskedForIt() {
        try (OpenDesk desk = new OpenDesk(places())) {
            HeldSitting sitting = new HeldSitting(ADA, new AtomicBoolean());
            desk.supplies().neighbours().signIn(sitting);
            PageJobs jobs = new PageJobs(
                    desk.window().shell().getDisplay(),
                    desk.supplies().workers().pool(),
                    () -> true,
                    new JobBoard(),
                    e -> desk.window().say(e.getMessage()));
            new SignInActs(desk.window(), desk.supplies(), jobs)
                    .choose(new Person(ADA, Optional.of("Ada Brook"), Set.of()));
            desk.await(() -> desk.window().shell().getShells().length == 1);
            assertThat(desk.session().actor()).isEmpty();
            Shell sheet = desk.window().shell().getShells()[0];
            sheet.getDefaultButton().notifyListeners(SWT.Selection, new Event());
            desk.await(() -> desk.session().actor().isPresent());
            assertThat(sitting.sits(ADA)).isTrue();
            assertThat(sheet.isDisposed()).isTrue();
        }
    }

    private static Places places() {
        Places places = new Places();
        Offer.add(places, "bench", 10, new PlainPage("&Bench"));
        return places;
    }
}
