package wickbench.parts.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.Actor;
import wickbench.api.part.PartSet;
import wickbench.api.person.PersonId;
import wickbench.parts.ui.PartsDoors.Known;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;

/** What can be done with sets: each is looked at first, then signed for, then done. */
final class PartActs {
    private final PageContext context;
    private final PartsDoors doors;
    private final Outcome outcome;

    /** Hears what came of an act, on the UI thread. */
    interface Outcome {

        /** Something was looked at, and nothing changed. */
        void seen(String text);

        /** Something has changed. */
        void changed(String text);

        void failed(Exception failure);
    }

    PartActs(PageContext context, PartsDoors doors, Outcome outcome) {
        this.context = context;
        this.doors = doors;
        this.outcome = outcome;
    }

    /** Lets a person choose an archive and judges it. */
    void verify() {
        choose().ifPresent(file -> judged(
                file,
                set -> outcome.seen(PartsUiWords.get(
                        "verified", set.title(), set.version(), set.maker().orElse("")))));
    }

    /** Lets a person choose an archive and adds it once they have signed. */
    void add(Shell window, Known known) {
        choose().ifPresent(file -> add(window, known, file));
    }

    private void add(Shell window, Known known, Path file) {
        PersonId by = context.actor().orElseThrow();
        judged(
                file,
                set -> SignSheet.watched(
                        context,
                        window,
                        asked("add", set, known),
                        (passphrase, reason, progress) -> doors.parts().add(file, new Actor(by, passphrase), progress),
                        added -> outcome.changed(PartsUiWords.get("added", added.title(), added.version()))));
    }

    /** Adds a set that the product holds. */
    void add(Shell window, Known known, PartSet set) {
        PersonId by = context.actor().orElseThrow();
        SignSheet.watched(
                context,
                window,
                asked("add", set, known),
                (passphrase, reason, progress) -> doors.parts().add(set.name(), new Actor(by, passphrase), progress),
                added -> outcome.changed(PartsUiWords.get("added", added.title(), added.version())));
    }

    void remove(Shell window, Known known, PartSet set) {
        PersonId by = context.actor().orElseThrow();
        SignSheet.open(
                context,
                window,
                asked("remove", set, known),
                (passphrase, reason) -> doors.parts().remove(set.name(), new Actor(by, passphrase)),
                gone -> outcome.changed(PartsUiWords.get("removed", gone.title())));
    }

    private void judged(Path file, Consumer<PartSet> good) {
        context.jobs()
                .run(
                        PartsUiWords.get("verifying", file.getFileName()),
                        progress -> doors.parts().look(file),
                        good,
                        outcome::failed);
    }

    private static Asked asked(String act, PartSet set, Known known) {
        return new Asked(
                PartsUiWords.get(act + ".title", set.title(), set.version()),
                known.signer().orElseThrow(),
                PartsUiWords.get("change.meaning"),
                PartsUiWords.get(act + ".verb"),
                Optional.empty(),
                known.keyed());
    }

    private Optional<Path> choose() {
        return context.files().open(PartsUiWords.get("file.choose"), "*.zip", "*");
    }
}
