package wickbench.journal.ui;

import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** What stations decided differently, and for each decision a button that lets the subject stand by it; only while there is any. */
final class ClashPanel {
    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;

    ClashPanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "clashes", grown);
    }

    /** @param done told when one was settled */
    void fill(JournalDoors.Known known, Runnable done) {
        DateTimeFormatter times = StationsPanel.times(known);
        known.clashes().open().forEach(clash -> fill(clash, known.clashes(), times, done));
        if (known.clashes().settle() instanceof Denied denied) {
            context.theme().controls().quiet(panel.content(), denied.text());
        }
    }

    private void fill(ClashDoors.Open clash, ClashDoors.Known known, DateTimeFormatter times, Runnable done) {
        Fit.wide(new Note(
                panel.content(), context.theme(), Meaning.CAUTION, JournalUiWords.get("clashes.one", clash.subject())));
        for (ClashDoors.Choice choice : clash.choices()) {
            new Facts(panel.content(), context.theme())
                    .add(
                            choice.ref().toString(),
                            Type.BODY,
                            JournalUiWords.get(
                                    "clashes.choice",
                                    choice.kind(),
                                    choice.who(),
                                    choice.at().map(times::format).orElse("")));
            Button button = context.theme()
                    .controls()
                    .buttonOfMany(
                            context.theme().controls().row(panel.content()),
                            JournalUiWords.get("clashes.act", choice.ref()),
                            () -> settle(clash, choice, known, done));
            button.setEnabled(known.settle().allowed());
        }
    }

    private void settle(ClashDoors.Open clash, ClashDoors.Choice choice, ClashDoors.Known known, Runnable done) {
        PersonId by = context.actor().orElseThrow();
        SignSheet.open(
                context,
                panel.content().getShell(),
                new Asked(
                        JournalUiWords.get("clashes.title-one", clash.subject(), choice.ref()),
                        known.signer().orElseThrow(),
                        JournalUiWords.get("clashes.meaning"),
                        JournalUiWords.get("clashes.verb"),
                        Optional.of(JournalUiWords.get("clashes.reason")),
                        known.keyed()),
                (passphrase, reason) -> {
                    doors.clashes().settling().settle(clash.subject(), choice.ref(), reason, by, passphrase);
                    return choice.ref();
                },
                stands -> {
                    context.say(JournalUiWords.get("clashes.settled", clash.subject(), stands));
                    done.run();
                });
    }
}
