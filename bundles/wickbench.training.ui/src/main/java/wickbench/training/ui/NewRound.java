package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Rounds.Prepared;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A round that is designed, its chances before one's eyes, and then opened: its key drawn and sealed. */
final class NewRound {
    private final PageContext context;
    private final TrainingDoors doors;
    private final Consumer<String> opened;
    private final Runnable back;
    private final Scroller scroller;
    private Optional<Draft> waiting = Optional.empty();
    private Optional<DesignPanel> design = Optional.empty();
    private Optional<OpenForm> form = Optional.empty();
    private Button open;
    private SaidLine said;
    private TrainingDoors.Known known;

    /** What was typed. */
    record Draft(List<String> design, OpenForm.Draft form) {}

    NewRound(Composite parent, PageContext context, TrainingDoors doors, Consumer<String> opened, Runnable back) {
        this.context = context;
        this.doors = doors;
        this.opened = opened;
        this.back = back;
        scroller = new Scroller(parent, context.theme());
        read();
    }

    Composite control() {
        return scroller.control();
    }

    private void read() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(TrainingUiWords.get("rounds.reading"), progress -> doors.known(actor), this::take);
    }

    private void take(TrainingDoors.Known now) {
        if (scroller.control().isDisposed()) {
            return;
        }
        known = now;
        if (design.isEmpty()) {
            fill();
        }
        may();
    }

    private void fill() {
        Theme theme = context.theme();
        Composite room = scroller.content();
        theme.controls().label(room, Type.HEADING, TrainingUiWords.get("design.heading"));
        DesignPanel panel = new DesignPanel(room, context, doors, scroller::measure);
        OpenForm fields = new OpenForm(room, context, doors, known, panel, scroller::measure);
        Composite row = theme.controls().row(room);
        open = theme.controls().mainButton(row, TrainingUiWords.get("open.act"), this::open);
        theme.controls().button(row, TrainingUiWords.get("form.leave"), back);
        said = new SaidLine(room, theme, scroller::measure);
        design = Optional.of(panel);
        form = Optional.of(fields);
        waiting.ifPresent(this::restore);
        scroller.measure();
        panel.focus();
        context.ready();
    }

    private void may() {
        Permission keep = known.rights().keep();
        open.setEnabled(keep.allowed());
        said.say(keep instanceof Permission.Denied denied ? denied.text() : "");
    }

    /** Hears that somebody else has the desk. */
    void actor() {
        read();
    }

    private void open() {
        Optional<Wanted> wanted = design.orElseThrow().wanted();
        Optional<PlanAsked> asked = form.orElseThrow().asked();
        if (wanted.isEmpty() || asked.isEmpty()) {
            said.say(TrainingUiWords.get("open.wrong"));
            return;
        }
        Actor by = Actor.of(known.rights().actor().orElseThrow());
        open.setEnabled(false);
        said.say("");
        context.jobs()
                .run(
                        TrainingUiWords.get("open.opening"),
                        progress -> doors.blind()
                                .rounds()
                                .open(asked.get().plan(wanted.get().design(doors)), by),
                        this::prepared,
                        failure -> {
                            if (!open.isDisposed()) {
                                open.setEnabled(true);
                                said.refuse(failure);
                            }
                        });
    }

    /** The key is in hand once: who prepares the strips saves their list now, or never. */
    private void prepared(Prepared prepared) {
        if (scroller.control().isDisposed()) {
            return;
        }
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
        new PreparedRound(context, doors, () -> opened.accept(prepared.round().id()))
                .fill(scroller.content(), prepared);
        scroller.measure();
    }

    void focus() {
        design.ifPresent(DesignPanel::focus);
    }

    Draft draft() {
        return design.map(panel -> new Draft(panel.typed(), form.orElseThrow().draft()))
                .or(() -> waiting)
                .orElse(new Draft(List.of(), OpenForm.Draft.NONE));
    }

    void restore(Draft draft) {
        waiting = Optional.of(draft);
        if (!draft.design().isEmpty()) {
            design.ifPresent(panel -> panel.type(draft.design()));
            form.ifPresent(fields -> fields.restore(draft.form()));
        }
    }

    OpenForm form() {
        return form.orElseThrow();
    }
}
