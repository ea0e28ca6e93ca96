package wickbench.training.ui;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.words.Coded;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;

/** The open page: the skills matrix, blind rounds, or the faint-line drill. */
final class TrainingPart implements PagePart {
    private final PageContext context;
    private final TrainingDoors doors;
    private final Heading heading;
    private final Composite body;
    private final Map<Kind, Button> buttons = new EnumMap<>(Kind.class);
    private Kind kind = Kind.SKILLS;
    private View view;

    /** What can be looked at. */
    enum Kind implements Coded {
        SKILLS,
        ROUNDS,
        DRILL
    }

    /** What goes over to a new look. */
    private record Draft(Kind kind, Optional<Object> of) {}

    TrainingPart(Composite parent, PageContext context, TrainingDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite page = context.theme().controls().box(parent, 1);
        heading = new Heading(page, context.theme(), TrainingUiWords.get("page.heading"), "");
        // below the words, where a small window at a large text size has room for all three
        Composite actions = context.theme().controls().row(page);
        for (Kind each : Kind.values()) {
            buttons.put(
                    each,
                    context.theme()
                            .controls()
                            .button(actions, TrainingUiWords.get("view." + each.code()), () -> open(each)));
        }
        body = Fit.grow(context.theme().controls().box(page, 1));
        make(Kind.SKILLS);
        context.onActor(actor -> view.actor());
    }

    private void open(Kind next) {
        if (next != kind) {
            make(next);
        }
        view.focus();
    }

    private void make(Kind next) {
        kind = next;
        for (Control old : body.getChildren()) {
            old.dispose();
        }
        heading.line(TrainingUiWords.get("line." + kind.code()));
        // where one is already there is nowhere to go to
        buttons.forEach((each, button) -> button.setEnabled(each != kind));
        view = switch (kind) {
            case SKILLS -> new SkillsView(body, context, doors);
            case ROUNDS -> new RoundsView(body, context, doors);
            case DRILL -> new DrillView(body, context, doors);
        };
        body.layout(true, true);
    }

    /** Shows a view by its code, or one person of the matrix by their id. */
    @Override
    public void show(String argument) {
        Optional<Kind> asked = Arrays.stream(Kind.values())
                .filter(each -> each.code().equals(argument))
                .findFirst();
        open(asked.orElse(Kind.SKILLS));
        if (asked.isEmpty() && view instanceof SkillsView skills) {
            skills.show(argument);
        }
    }

    @Override
    public void shown() {
        view.focus();
    }

    @Override
    public void newsCame() {
        view.refresh();
    }

    @Override
    public Optional<Object> draft() {
        return Optional.of(new Draft(kind, view.draft()));
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Draft kept) {
            make(kept.kind());
            kept.of().ifPresent(view::restore);
        }
    }

    /** Returns the view that is shown. */
    View view() {
        return view;
    }

    /** Returns what stands below the heading. */
    Composite body() {
        return body;
    }
}
