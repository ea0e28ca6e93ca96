package wickbench.training.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.person.PersonId;
import wickbench.api.report.Report;
import wickbench.shell.PageContext;
import wickbench.training.Agreement;
import wickbench.training.Round;
import wickbench.training.Truth;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The rounds that were held, newest first, and one of them in full beside the list. */
final class RoundList {
    private final PageContext context;
    private final TrainingDoors doors;
    private final RoundsView.Going going;
    private final Composite room;
    private Optional<TableKit<Round>> table = Optional.empty();
    private Optional<Scroller> side = Optional.empty();
    private Optional<Known> known = Optional.empty();
    private Optional<String> wanted = Optional.empty();

    /** What is shown of rounds. */
    record Known(List<Round> rounds, TrainingDoors.Known site) {}

    /** One round in full. */
    record Whole(Round round, Optional<Agreement> agreement, Map<String, Truth> truth, Report report) {}

    RoundList(Composite parent, PageContext context, TrainingDoors doors, RoundsView.Going going) {
        this.context = context;
        this.doors = doors;
        this.going = going;
        room = context.theme().controls().box(parent, 1);
        refresh();
    }

    Composite control() {
        return room;
    }

    RoundsView.Going going() {
        return going;
    }

    Optional<String> chosen() {
        return wanted;
    }

    void refresh() {
        Optional<PersonId> actor = context.actor();
        context.jobs()
                .run(
                        TrainingUiWords.get("rounds.reading"),
                        progress -> new Known(doors.blind().rounds().all(), doors.known(actor)),
                        this::take);
    }

    private void take(Known now) {
        if (room.isDisposed()) {
            return;
        }
        boolean focused = table.isPresent() && room.getDisplay().getFocusControl() != null && inside();
        known = Optional.of(now);
        for (Control old : room.getChildren()) {
            old.dispose();
        }
        table = Optional.empty();
        if (now.rounds().isEmpty()) {
            empty(now);
        } else {
            fill(now);
        }
        room.layout(true, true);
        if (focused) {
            focus();
        }
    }

    private boolean inside() {
        Control at = room.getDisplay().getFocusControl();
        while (at != null && at != room) {
            at = at.getParent();
        }
        return at == room;
    }

    private void empty(Known now) {
        EmptyState state = Fit.grow(new EmptyState(
                room,
                context.theme(),
                pen -> pen.box(4, 6, 16, 13, 1)
                        .line(8, 6, 8, 19)
                        .line(12, 10, 16, 10)
                        .line(12, 14, 16, 14),
                TrainingUiWords.get("rounds.none"),
                TrainingUiWords.get("rounds.none.line")));
        state.offer(TrainingUiWords.get("rounds.new"), going::design);
        context.ready();
    }

    private void fill(Known now) {
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        Composite left = context.theme().controls().box(sash, 1);
        Composite bar = context.theme().controls().row(left);
        context.theme().controls().mainButton(bar, TrainingUiWords.get("rounds.new"), going::design);
        TableKit<Round> kit = new TableKit<>(left, context, RoundTable.of(now.rounds(), now.site()));
        Fit.grow(kit.control());
        side = Optional.of(new Scroller(sash, context.theme()));
        sash.setWeights(46, 54);
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> selectWanted(kit));
    }

    private void selectWanted(TableKit<Round> kit) {
        if (kit.selected().isEmpty()) {
            wanted.flatMap(id -> kit.rows().stream()
                            .filter(row -> row.id().equals(id))
                            .findFirst())
                    .or(() -> kit.rows().stream().findFirst())
                    .ifPresent(kit::select);
        }
    }

    private void choose(Round round) {
        wanted = Optional.of(round.id());
        context.jobs()
                .run(
                        TrainingUiWords.get("rounds.reading"),
                        progress -> new Whole(
                                round,
                                doors.blind().rounds().agreement(round.id()),
                                doors.blind().rounds().truth(round.id()),
                                doors.papers().round(round)),
                        this::aside);
    }

    private void aside(Whole whole) {
        Scroller scroller = side.orElseThrow();
        boolean current = wanted.filter(whole.round().id()::equals).isPresent();
        if (scroller.control().isDisposed() || !current) {
            return;
        }
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
        new RoundCard(context, doors, known.orElseThrow(), going, scroller::measure, this::refresh)
                .fill(scroller.content(), whole);
        scroller.measure();
        context.ready();
    }

    /** Shows the round with this id. */
    void show(String round) {
        wanted = Optional.of(round);
        table.ifPresent(kit -> kit.rows().stream()
                .filter(row -> row.id().equals(round))
                .findFirst()
                .ifPresent(kit::select));
    }

    void focus() {
        table.ifPresent(TableKit::focus);
    }
}
