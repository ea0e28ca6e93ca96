package wickbench.journal.ui;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.journal.Comparison;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Meaning;
import wickbench.widgets.Work;

/** Holds a checkpoint from a report or another station against the journal. */
final class ComparePanel {
    private static final int AREA_HEIGHT = 84;

    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;
    private final Field<Text> checkpoint;

    ComparePanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "compare", grown);
        checkpoint = panel.form()
                .field(JournalUiWords.get("compare.checkpoint"), context.theme().controls()::area);
        GridData data = (GridData) checkpoint.control().getLayoutData();
        data.heightHint = context.theme().px(AREA_HEIGHT);
        // Tab leads on to the buttons; a checkpoint has no tabs in it
        checkpoint.control().addListener(SWT.Traverse, ComparePanel::leave);
        panel.button("compare.act", this::compareTyped);
        panel.button("compare.picture", this::choosePicture);
    }

    private static void leave(org.eclipse.swt.widgets.Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = true;
        }
    }

    String draft() {
        return checkpoint.control().getText();
    }

    void restore(String draft) {
        checkpoint.control().setText(draft);
    }

    private void compareTyped() {
        String text = checkpoint.control().getText();
        if (text.isBlank()) {
            checkpoint.complain(JournalUiWords.get("compare.blank"));
        } else {
            checkpoint.clear();
            run(progress -> doors.proofs().compare(text));
        }
    }

    private void choosePicture() {
        context.files()
                .open(JournalUiWords.get("compare.choose"), "*.png;*.jpg;*.jpeg;*.gif;*.bmp", "*")
                .ifPresent(this::read);
    }

    /** Reads the code in a picture, shows its text in the field, and compares it. */
    void read(Path picture) {
        checkpoint.clear();
        context.jobs()
                .run(
                        JournalUiWords.get("compare.reading"),
                        progress -> CodePicture.read(picture),
                        found -> found.ifPresentOrElse(
                                text -> {
                                    checkpoint.control().setText(text);
                                    compareTyped();
                                },
                                () -> panel.say(
                                        Meaning.CAUTION,
                                        JournalUiWords.get("compare.no-code"),
                                        JournalUiWords.get("compare.no-code.text", picture.getFileName()))),
                        panel::fail);
    }

    private void run(Work<Comparison> work) {
        context.jobs().run(JournalUiWords.get("compare.work"), work, this::take, panel::fail);
    }

    private void take(Comparison comparison) {
        panel.say(
                meaning(comparison),
                JournalUiWords.get("compare." + comparison.result().code()),
                comparison.text());
    }

    private static Meaning meaning(Comparison comparison) {
        return switch (comparison.result()) {
            case CONSISTENT -> Meaning.CALM;
            case OLDER, FORKED, KEY_DIFFERS -> Meaning.ALARM;
            case UNKNOWN_STATION, UNREADABLE -> Meaning.CAUTION;
        };
    }
}
