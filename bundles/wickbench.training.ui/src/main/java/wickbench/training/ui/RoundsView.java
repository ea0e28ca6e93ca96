package wickbench.training.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Round;
import wickbench.widgets.Fit;

/** Blind rounds: those that were held, a new one, or the strips of one before a reader; one at a time is in front. */
final class RoundsView implements View {
    /** No round is called so. */
    private static final String NEW = "+";

    private final PageContext context;
    private final TrainingDoors doors;
    private final Composite room;
    private final StackLayout stack = new StackLayout();
    private final RoundList list;
    private Optional<NewRound> design = Optional.empty();
    private Optional<CallStage> call = Optional.empty();

    /** What goes over to a new look. */
    private record Draft(Optional<String> chosen, Optional<NewRound.Draft> design, Optional<CallDraft> call) {}

    /**
     * @param person shows somebody in the skills matrix
     */
    RoundsView(Composite parent, PageContext context, TrainingDoors doors, Consumer<PersonId> person) {
        this.context = context;
        this.doors = doors;
        room = Fit.grow(context.theme().controls().box(parent, 1));
        room.setLayout(stack);
        list = new RoundList(room, context, doors, new Going(person));
        front(list.control());
    }

    /** Where one may go from the list. */
    final class Going {
        private final Consumer<PersonId> person;

        private Going(Consumer<PersonId> person) {
            this.person = person;
        }

        void person(PersonId id) {
            person.accept(id);
        }

        void design() {
            leave();
            design = Optional.of(new NewRound(room, context, doors, RoundsView.this::opened, RoundsView.this::back));
            front(design.get().control());
            design.get().focus();
        }

        void call(Round round, PersonId reader) {
            leave();
            CallRun run = new CallRun(round, reader, doors.blind().starts());
            call = Optional.of(new CallStage(room, context, doors, run, RoundsView.this::back));
            front(call.get().control());
            call.get().focus();
        }
    }

    private void front(Composite next) {
        stack.topControl = next;
        room.layout(true, true);
    }

    private void leave() {
        design.ifPresent(stage -> stage.control().dispose());
        call.ifPresent(stage -> stage.control().dispose());
        design = Optional.empty();
        call = Optional.empty();
    }

    private void opened(String round) {
        list.show(round);
        back();
    }

    private void back() {
        leave();
        front(list.control());
        list.refresh();
        list.focus();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void refresh() {
        if (design.isEmpty() && call.isEmpty()) {
            list.refresh();
        }
    }

    /** Shows the round with this id, or a new one. */
    @Override
    public void show(String round) {
        if (round.equals(NEW)) {
            list.going().design();
        } else {
            list.show(round);
            back();
        }
    }

    @Override
    public void focus() {
        design.ifPresentOrElse(NewRound::focus, () -> call.ifPresentOrElse(CallStage::focus, list::focus));
    }

    /** Calls are one person's: whoever else comes to the desk sees none of them. */
    @Override
    public void actor() {
        if (call.isPresent()) {
            back();
        } else {
            design.ifPresent(NewRound::actor);
            list.refresh();
        }
    }

    @Override
    public Optional<Object> draft() {
        return Optional.of(new Draft(list.chosen(), design.map(NewRound::draft), call.map(CallStage::draft)));
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Draft kept) {
            kept.chosen().ifPresent(list::show);
            kept.design().ifPresent(half -> {
                list.going().design();
                design.orElseThrow().restore(half);
            });
            kept.call().ifPresent(this::goOn);
        }
    }

    private void goOn(CallDraft half) {
        context.actor()
                .ifPresent(reader -> context.jobs()
                        .run(
                                TrainingUiWords.get("rounds.reading"),
                                progress -> doors.blind().rounds().find(half.round()),
                                found -> found.filter(round -> !room.isDisposed())
                                        .ifPresent(round -> {
                                            list.going().call(round, reader);
                                            call.orElseThrow().restore(half);
                                        })));
    }

    /** Returns the strips before the reader, where somebody calls. */
    Optional<CallStage> call() {
        return call;
    }

    RoundList list() {
        return list;
    }

    Optional<NewRound> design() {
        return design;
    }
}
