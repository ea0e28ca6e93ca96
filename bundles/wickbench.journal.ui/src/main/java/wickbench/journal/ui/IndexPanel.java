package wickbench.journal.ui;

import java.util.List;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.index.ViewState;
import wickbench.shell.PageContext;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** The tables that pages read, each a view of the journal, and making them again. */
final class IndexPanel {
    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;

    IndexPanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "index", grown);
    }

    /** @param done told when the tables were made again */
    void fill(JournalDoors.Known known, Runnable done) {
        known.indexNotices()
                .forEach(text -> Fit.wide(new Note(panel.content(), context.theme(), Meaning.CAUTION, text)));
        if (known.status().isEmpty()) {
            context.theme().controls().text(panel.content(), Type.BODY, JournalUiWords.get("index.closed"));
        }
        Facts facts = new Facts(panel.content(), context.theme());
        known.views().forEach(view -> facts.add(view.name(), state(view)));
        Button rebuild = panel.button("index.act", () -> {});
        rebuild.setEnabled(known.status().isPresent());
        rebuild.addListener(org.eclipse.swt.SWT.Selection, event -> rebuild(rebuild, done));
    }

    private static String state(ViewState view) {
        if (view.failure().isPresent()) {
            return JournalUiWords.get(
                    "index.stopped", view.taken(), view.failure().get());
        }
        return view.taken() == view.of()
                ? JournalUiWords.get("index.complete", view.taken())
                : JournalUiWords.get("index.behind", view.taken(), view.of());
    }

    private void rebuild(Button button, Runnable done) {
        button.setEnabled(false);
        panel.say(Meaning.NOTICE, JournalUiWords.get("index.running"), JournalUiWords.get("index.running.text"));
        context.jobs()
                .run(
                        JournalUiWords.get("index.work"),
                        progress -> {
                            doors.index().rebuild(progress);
                            return doors.index().views();
                        },
                        views -> rebuilt(views, done),
                        failure -> {
                            button.setEnabled(true);
                            panel.fail(failure);
                        });
    }

    private void rebuilt(List<ViewState> views, Runnable done) {
        context.say(JournalUiWords.get("index.done", views.size()));
        done.run();
    }
}
