package wickbench.training.ui;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.shell.PageContext;
import wickbench.training.Round;
import wickbench.widgets.Column;
import wickbench.widgets.Fit;
import wickbench.widgets.RowSource;
import wickbench.widgets.Scroller;
import wickbench.widgets.Sort;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Type;

/** Blind rounds: what a design tells apart before it is fixed, and the rounds that were held. */
final class RoundsView implements View {
    private static final int TABLE = 240;

    private final PageContext context;
    private final TrainingDoors doors;
    private final Scroller scroller;
    private final DesignPanel design;
    private final Composite list;

    /** What is shown of rounds. */
    private record Known(List<Round> rounds, ZoneId zone) {}

    RoundsView(Composite parent, PageContext context, TrainingDoors doors) {
        this.context = context;
        this.doors = doors;
        scroller = new Scroller(parent, context.theme());
        Fit.grow(scroller.control());
        design = new DesignPanel(scroller.content(), context, doors, scroller::measure);
        list = Fit.wide(context.theme().controls().box(scroller.content(), 1));
        refresh();
    }

    @Override
    public Composite control() {
        return scroller.control();
    }

    @Override
    public void refresh() {
        context.jobs()
                .run(
                        TrainingUiWords.get("rounds.reading"),
                        progress -> new Known(
                                doors.rounds().all(), doors.competences().zone()),
                        this::take);
    }

    private void take(Known known) {
        if (list.isDisposed()) {
            return;
        }
        for (Control old : list.getChildren()) {
            old.dispose();
        }
        context.theme().controls().label(list, Type.HEADING, TrainingUiWords.get("rounds.held"));
        if (known.rounds().isEmpty()) {
            context.theme().controls().text(list, Type.BODY, TrainingUiWords.get("rounds.none"));
        } else {
            Control table = new TableKit<>(list, context, spec(known)).control();
            GridData data = new GridData(GridData.FILL_HORIZONTAL);
            data.heightHint = context.theme().px(TABLE);
            table.setLayoutData(data);
        }
        context.theme().controls().text(list, Type.SMALL, TrainingUiWords.get("rounds.command"));
        scroller.measure();
        context.ready();
    }

    private static TableSpec<Round> spec(Known known) {
        List<Column<Round>> columns = List.of(
                column("id", 130, Round::id),
                column("method", 170, round -> round.plan().method().value()),
                column(
                        "state",
                        110,
                        round -> TrainingUiWords.get("round." + round.state().code())),
                column("opened", 140, round -> Times.minute(round.opened(), known.zone())),
                column("strips", 80, round -> String.valueOf(round.codes().size()))
                        .rightAligned(),
                column(
                        "missing",
                        170,
                        round -> round.missing().stream()
                                .map(Object::toString)
                                .collect(java.util.stream.Collectors.joining(", "))),
                column("passed", 120, RoundsView::passed));
        return new TableSpec<>(
                "training.rounds",
                TrainingUiWords.get("rounds.held"),
                columns,
                RowSource.of(known.rounds(), columns),
                Optional.of(new Sort("opened", false)),
                TrainingUiWords.get("rounds.none"));
    }

    private static String passed(Round round) {
        long passed = round.scores().stream().filter(score -> score.passed()).count();
        return round.state() == Round.State.SCORED
                ? TrainingUiWords.get("of", passed, round.scores().size())
                : "";
    }

    private static Column<Round> column(String id, int width, java.util.function.Function<Round, String> text) {
        return Column.of(id, TrainingUiWords.get("rounds.column." + id), width, text);
    }

    @Override
    public void focus() {
        design.focus();
    }

    @Override
    public Optional<Object> draft() {
        return Optional.of(design.typed());
    }

    @Override
    @SuppressWarnings("unchecked")
    public void restore(Object draft) {
        design.type((List<String>) draft);
    }
}
