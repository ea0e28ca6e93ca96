package wickbench.journal.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.index.ViewState;
import wickbench.api.progress.Progress;
import wickbench.api.words.Decimals;
import wickbench.shell.PageContext;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Job;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** The tables that pages read, each a view of the journal, and making them again. */
final class IndexPanel {
    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;
    private Composite states;
    private Button rebuild;
    private Optional<Button> rest = Optional.empty();
    private Optional<Job> building = Optional.empty();

    IndexPanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "index", grown);
    }

    /** @param done told when the tables are whole again */
    void fill(JournalDoors.Known known, Runnable done) {
        known.indexNotices()
                .forEach(text -> Fit.wide(new Note(panel.content(), context.theme(), Meaning.CAUTION, text)));
        if (known.status().isEmpty()) {
            context.theme().controls().text(panel.content(), Type.BODY, JournalUiWords.get("index.closed"));
        }
        states = Fit.wide(context.theme().controls().box(panel.content(), 1));
        show(known.views());
        rebuild = panel.button("index.act", () -> press(done));
        rebuild.setEnabled(known.status().isPresent());
    }

    private void show(List<ViewState> views) {
        for (Control old : states.getChildren()) {
            old.dispose();
        }
        Facts facts = new Facts(states, context.theme());
        views.forEach(view -> facts.add(view.name(), state(view)));
    }

    private static String state(ViewState view) {
        if (view.failure().isPresent()) {
            return JournalUiWords.get(
                    "index.stopped",
                    Decimals.grouped(view.taken()),
                    view.failure().get());
        }
        return behind(view)
                ? JournalUiWords.get("index.behind", Decimals.grouped(view.taken()), Decimals.grouped(view.of()))
                : JournalUiWords.get("index.complete", Decimals.grouped(view.taken()));
    }

    private static boolean behind(ViewState view) {
        return view.taken() < view.of();
    }

    private void press(Runnable done) {
        if (building.filter(Job::running).isPresent()) {
            building.get().cancel();
            rebuild.setEnabled(false);
            panel.say(Meaning.NOTICE, JournalUiWords.get("index.stopping"), JournalUiWords.get("index.stopping.text"));
        } else {
            begin(progress -> doors.index().rebuild(progress), done);
        }
    }

    /** Work on the index that asks how to go on. */
    private interface Building {
        void run(Progress progress);
    }

    private void begin(Building work, Runnable done) {
        rebuild.setText(JournalUiWords.get("index.stop"));
        rest.ifPresent(button -> button.setEnabled(false));
        say(0);
        Steps steps = new Steps(percent -> update(() -> running(percent)));
        building = Optional.of(context.jobs()
                .run(
                        JournalUiWords.get("index.work"),
                        progress -> {
                            Runnable told = built(work, steps, progress, done);
                            // a job that was cancelled delivers nothing, and this is to be told then too
                            update(told);
                            return told;
                        },
                        told -> {}));
    }

    /** Returns what is to be told of it. */
    private Runnable built(Building work, Steps steps, Progress progress, Runnable done) {
        try {
            work.run(steps.watching(progress));
            List<ViewState> views = doors.index().views();
            return () -> over(views, steps.stopped(), done);
        } catch (RuntimeException e) {
            return () -> {
                idle();
                panel.fail(e);
            };
        }
    }

    /** Changes the panel unless the page was filled anew since. */
    private void update(Runnable change) {
        context.update(() -> {
            if (!rebuild.isDisposed()) {
                change.run();
            }
        });
    }

    private void running(int percent) {
        if (building.filter(Job::running).isPresent()) {
            say(percent);
        }
    }

    private void say(int percent) {
        panel.say(
                Meaning.NOTICE, JournalUiWords.get("index.running"), JournalUiWords.get("index.running.text", percent));
    }

    private void idle() {
        rebuild.setText(JournalUiWords.get("index.act"));
        rebuild.setEnabled(true);
        rest.ifPresent(button -> button.setEnabled(true));
    }

    private void over(List<ViewState> views, boolean stopped, Runnable done) {
        idle();
        if (stopped && views.stream().anyMatch(IndexPanel::behind)) {
            show(views);
            rest = rest.or(() -> Optional.of(panel.button("index.rest", () -> begin(doors.index()::catchUp, done))));
            panel.say(Meaning.NEUTRAL, JournalUiWords.get("index.halted"), JournalUiWords.get("index.halted.text"));
        } else {
            context.say(JournalUiWords.get("index.done", views.size()));
            done.run();
        }
    }
}
