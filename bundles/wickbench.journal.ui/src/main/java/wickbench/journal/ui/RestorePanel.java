package wickbench.journal.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.backup.Restored;
import wickbench.api.journal.Comparison;
import wickbench.api.words.Decimals;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Meaning;

/** Makes a new home of a back-up; the home of this window stays as it is. */
final class RestorePanel {
    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;
    private final Field<Text> backup;
    private final Field<Text> home;
    private final Field<Text> known;

    RestorePanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "restore", grown);
        Form form = panel.form();
        backup = form.text(JournalUiWords.get("restore.backup"));
        home = form.text(JournalUiWords.get("restore.home"));
        known = form.text(JournalUiWords.get("restore.known"));
        known.hint(JournalUiWords.get("restore.known.hint"));
        panel.chooser("restore.choose", backup);
        panel.chooser("restore.choose-home", home);
        panel.button("restore.act", this::restore);
    }

    private void restore() {
        Optional<Path> from = Panel.path(backup);
        Optional<Path> to = Panel.path(home);
        if (from.isEmpty() || to.isEmpty()) {
            return;
        }
        String typed = known.control().getText();
        Optional<String> checkpoint = Optional.of(typed).filter(text -> !text.isBlank());
        panel.say(Meaning.NOTICE, JournalUiWords.get("restore.running"), JournalUiWords.get("restore.running.text"));
        context.jobs()
                .run(
                        JournalUiWords.get("restore.work"),
                        progress -> doors.backups().restore(from.get(), to.get(), checkpoint, progress),
                        this::take,
                        panel::fail);
    }

    private void take(Restored restored) {
        boolean behind = restored.known().filter(known -> !known.holds()).isPresent();
        String text = JournalUiWords.get(
                "restore.done.text",
                Decimals.grouped(restored.verification().entries()),
                restored.from().made(),
                restored.folder());
        panel.say(
                behind ? Meaning.CAUTION : Meaning.CALM,
                JournalUiWords.get(behind ? "restore.behind" : "restore.done"),
                text + "\n"
                        + restored.known()
                                .map(Comparison::text)
                                .orElseGet(() -> JournalUiWords.get("restore.unknown")));
    }
}
