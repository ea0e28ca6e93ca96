package wickbench.journal.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.backup.Backup;
import wickbench.api.backup.BackupPlan;
import wickbench.api.backup.BackupState;
import wickbench.api.words.Decimals;
import wickbench.shell.PageContext;
import wickbench.widgets.Badge;
import wickbench.widgets.Facts;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Work;

/** How old the newest back-up is, making one now, and the plan by which the desktop makes them. */
final class BackupPanel {
    private static final int DAYS = 1;
    private static final int KEPT = 14;

    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;
    private Field<Text> folder;
    private Field<Text> days;
    private Field<Text> keep;
    private Button planned;

    BackupPanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "backup", grown);
    }

    /** @param done told when something was made or set */
    void fill(JournalDoors.Known known, Runnable done) {
        age(known.backups());
        Form form = panel.form();
        folder = form.text(JournalUiWords.get("backup.folder"));
        days = form.text(JournalUiWords.get("backup.days"));
        keep = form.text(JournalUiWords.get("backup.keep"));
        planned = context.theme().controls().check(panel.content(), JournalUiWords.get("backup.planned"));
        show(known.backups().plan());
        panel.chooser("backup.choose", folder);
        Button now = panel.button("backup.act", () -> backUp(done));
        now.setEnabled(known.begun() && known.status().isPresent());
        panel.button("backup.keep-plan", () -> keepPlan(done));
    }

    private void age(BackupState state) {
        Meaning meaning = state.last().isEmpty() || state.due() ? Meaning.CAUTION : Meaning.CALM;
        String word = state.age()
                .map(old -> JournalUiWords.get("backup.age", Ages.text(old)))
                .orElseGet(() -> JournalUiWords.get("backup.never"));
        Badge badge = new Badge(panel.content(), context.theme(), new Mark(word, Panel.shape(meaning), meaning));
        badge.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        state.last()
                .ifPresent(last -> new Facts(panel.content(), context.theme())
                        .add(JournalUiWords.get("backup.last"), last.folder().toString())
                        .add(
                                JournalUiWords.get("fact.size"),
                                Decimals.grouped(last.checkpoint().size())));
    }

    private void show(Optional<BackupPlan> plan) {
        folder.control().setText(plan.map(set -> set.folder().toString()).orElse(""));
        days.control().setText(Integer.toString(plan.map(BackupPlan::days).orElse(DAYS)));
        keep.control().setText(Integer.toString(plan.map(BackupPlan::keep).orElse(KEPT)));
        planned.setSelection(plan.isPresent());
    }

    private void backUp(Runnable done) {
        Panel.path(folder).ifPresent(into -> run(progress -> doors.backups().backUpInto(into, progress), done));
    }

    private void run(Work<Backup> work, Runnable done) {
        panel.say(Meaning.NOTICE, JournalUiWords.get("backup.running"), JournalUiWords.get("backup.running.text"));
        context.jobs()
                .run(
                        JournalUiWords.get("backup.work"),
                        work,
                        made -> {
                            context.say(JournalUiWords.get(
                                    "backup.done",
                                    Decimals.grouped(made.checkpoint().size()),
                                    made.folder()));
                            done.run();
                        },
                        panel::fail);
    }

    private void keepPlan(Runnable done) {
        Optional<Optional<BackupPlan>> wanted =
                planned.getSelection() ? plan().map(Optional::of) : Optional.of(Optional.empty());
        wanted.ifPresent(plan -> context.jobs()
                .run(
                        JournalUiWords.get("backup.keeping"),
                        progress -> {
                            doors.backups().plan(plan);
                            return plan;
                        },
                        set -> {
                            context.say(JournalUiWords.get(set.isPresent() ? "backup.plan.set" : "backup.plan.none"));
                            done.run();
                        },
                        panel::fail));
    }

    private Optional<BackupPlan> plan() {
        days.clear();
        keep.clear();
        Optional<Path> into = Panel.path(folder);
        try {
            int between = number(days);
            int kept = number(keep);
            return into.map(path -> new BackupPlan(path, between, kept));
        } catch (NumberFormatException e) {
            days.complain(JournalUiWords.get("backup.number"));
        } catch (IllegalArgumentException e) {
            days.complain(e.getMessage());
        }
        return Optional.empty();
    }

    private static int number(Field<Text> field) {
        return Integer.parseInt(field.control().getText().strip());
    }
}
