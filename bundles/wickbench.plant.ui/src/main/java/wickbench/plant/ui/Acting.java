package wickbench.plant.ui;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;

/** Does what the person at the desk asks for, and says in the status line why it was not done. */
final class Acting {
    private Acting() {}

    /** Does something off the UI thread, if the person may. */
    static <T> void run(
            PageContext context,
            PlantDoors doors,
            Act act,
            String doing,
            Function<PersonId, T> work,
            Consumer<T> done) {
        Optional<PersonId> actor = context.actor();
        context.jobs()
                .run(
                        PlantUiWords.get(doing),
                        progress -> {
                            PlantDoors.May may = doors.may(actor, act);
                            if (may.permission() instanceof Permission.Denied denied) {
                                throw new IllegalStateException(denied.text());
                            }
                            return work.apply(actor.orElseThrow());
                        },
                        done,
                        failure -> context.say(String.valueOf(failure.getMessage())));
    }

    /** What is to be signed: the key of its words, and the facts in its title. */
    record Signing(Act act, String key, Object... facts) {}

    /** What is done with a signature. */
    @FunctionalInterface
    interface Signed {
        void act(Actor by, String reason);
    }

    /** Asks for a reason and a signature, and does it. */
    static void sign(PageContext context, PlantDoors doors, Shell shell, Signing what, Signed work, Runnable done) {
        Optional<PersonId> actor = context.actor();
        context.jobs()
                .run(
                        PlantUiWords.get("asking"),
                        progress -> doors.may(actor, what.act()),
                        may -> sheet(context, shell, what, may, work, done),
                        failure -> context.say(String.valueOf(failure.getMessage())));
    }

    private static void sheet(
            PageContext context, Shell shell, Signing what, PlantDoors.May may, Signed work, Runnable done) {
        if (may.permission() instanceof Permission.Denied denied) {
            context.say(denied.text());
            return;
        }
        SignSheet.open(
                context,
                shell,
                new Asked(
                        PlantUiWords.get(what.key() + ".title", what.facts()),
                        may.name(),
                        PlantUiWords.get(what.key() + ".meaning"),
                        PlantUiWords.get(what.key() + ".verb"),
                        Optional.of(PlantUiWords.get(what.key() + ".reason")),
                        may.keyed()),
                (passphrase, reason) -> {
                    work.act(new Actor(may.actor().orElseThrow(), passphrase), reason);
                    return "";
                },
                kept -> {
                    context.say(PlantUiWords.get(what.key() + ".done", what.facts()));
                    done.run();
                });
    }
}
