package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.shell.PageContext;
import wickbench.training.Drilled;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;

/** The faint-line drill: what it is, the step wedge, the strips, the result. */
final class DrillView implements View {
    private static final int LINE = 10;

    private final PageContext context;
    private final TrainingDoors doors;
    private final Scroller scroller;
    private Optional<DrillState> state = Optional.empty();
    private Runnable focus = () -> {};

    /** What is known when a drill may begin. */
    private record Known(long seed, List<Drilled> before) {}

    DrillView(Composite parent, PageContext context, TrainingDoors doors) {
        this.context = context;
        this.doors = doors;
        scroller = new Scroller(parent, context.theme());
        Fit.grow(scroller.control());
        begin();
    }

    /** Asks for a new seed, and for what the person at the desk did before. */
    private void begin() {
        Optional<wickbench.api.person.PersonId> actor = context.actor();
        context.jobs()
                .run(
                        TrainingUiWords.get("drill.reading"),
                        progress -> new Known(
                                doors.drills().seed(),
                                actor.map(who -> doors.drills().of(who)).orElse(List.of())),
                        this::begin);
    }

    private void begin(Known known) {
        boolean under =
                state.filter(now -> now.stage() != DrillState.Stage.BEGIN).isPresent();
        if (!scroller.content().isDisposed() && !under) {
            state = Optional.of(DrillState.begin(known.seed(), context.theme().px(LINE)));
            Composite room = cleared();
            focus = new BeginStage(room, context, known.before(), () -> go(DrillState.Stage.WEDGE))::focus;
            measured();
        }
    }

    private void go(DrillState.Stage next) {
        show(state.orElseThrow().at(next));
    }

    private void show(DrillState now) {
        state = Optional.of(now);
        Composite room = cleared();
        focus = switch (now.stage()) {
            case BEGIN -> throw new IllegalStateException("a drill begins with a seed");
            case WEDGE -> new WedgeStage(room, context, now.seed(), new Wedged())::focus;
            case STRIPS -> new StripStage(room, context, now, this::answered, this::stop)::focus;
            case RESULT -> new ResultStage(room, context, doors, now, this::kept, this::stop)::focus;
        };
        measured();
        focus.run();
    }

    private final class Wedged implements WedgeStage.Then {
        @Override
        public void seen() {
            go(DrillState.Stage.STRIPS);
        }

        @Override
        public void stop() {
            DrillView.this.stop();
        }

        @Override
        public void grown() {
            scroller.measure();
        }
    }

    /** Takes the drill after an answer; its page changes only when the drill is over. */
    private void answered(DrillState then) {
        state = Optional.of(then);
        if (then.stage() == DrillState.Stage.RESULT) {
            show(then);
        }
    }

    /** Returns how far it is; empty before a drill may begin. */
    Optional<DrillState> state() {
        return state;
    }

    private void kept() {
        state = state.map(DrillState::done);
    }

    private void stop() {
        state = Optional.empty();
        begin();
    }

    private Composite cleared() {
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
        Fit.wide(new Note(scroller.content(), context.theme(), Meaning.CAUTION, TrainingUiWords.get("drill.practice")));
        return scroller.content();
    }

    private void measured() {
        scroller.measure();
        context.ready();
    }

    @Override
    public Composite control() {
        return scroller.control();
    }

    @Override
    public void focus() {
        focus.run();
    }

    @Override
    public void actor() {
        // a drill is one person's: whoever comes to the desk begins their own
        stop();
    }

    @Override
    public Optional<Object> draft() {
        return state.filter(now -> now.stage() != DrillState.Stage.BEGIN).map(now -> now);
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof DrillState kept) {
            show(kept);
        }
    }
}
