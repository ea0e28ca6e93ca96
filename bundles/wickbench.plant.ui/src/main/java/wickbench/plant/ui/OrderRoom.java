package wickbench.plant.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.day.Demands;
import wickbench.plant.terms.PlantTerms;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The order of the day: today's products in the order that takes the least time for changes, and what it saves. */
final class OrderRoom extends PlantRoom<OrderRoom.Now> {
    private Optional<Open> open = Optional.empty();
    private Optional<String> wanted = Optional.empty();

    private record Open(
            LinePick line, Text products, DemandFields demands, Note said, OrderBars bars, Scroller steps) {}

    record Now(PlantState plant, PlantDoors.May may) implements Known {}

    OrderRoom(Composite parent, PageContext context, PlantDoors doors) {
        super(parent, context, doors, "order.reading");
        reload();
    }

    @Override
    Now read(Optional<PersonId> actor) {
        return new Now(doors.book().at(doors.book().now()), doors.may(actor, Act.KEEP_PLANT));
    }

    @Override
    void take(Now known) {
        Open now = open.orElseThrow();
        now.line().offer(known.plant());
        wanted.ifPresent(line -> {
            now.line().choose(line);
            another();
        });
        wanted = Optional.empty();
        if (now.products().getText().isBlank()) {
            propose(known.plant(), now);
        }
        context.ready();
    }

    /** What was asked of one line says nothing of another. */
    private void another() {
        open.ifPresent(now -> {
            now.products().setText("");
            now.demands().clear();
        });
    }

    @Override
    void fill(Now known) {
        Theme theme = context.theme();
        Controls controls = theme.controls();
        Composite bar = controls.row(room);
        LinePick line = new LinePick(bar, context, chosen -> {
            another();
            reload();
        });
        Composite ask = Fit.wide(controls.box(room, 3));
        controls.label(ask, Type.BODY, PlantUiWords.get("order.products"));
        Text products = Fit.wide(Names.give(controls.field(ask), () -> PlantUiWords.get("order.products")));
        products.addListener(SWT.DefaultSelection, event -> plan());
        controls.mainButton(ask, PlantUiWords.get("order.verb"), this::plan);
        DemandFields demands = new DemandFields(room, theme, this::plan);
        Note said = Fit.wide(new Note(room, theme, Meaning.NOTICE, PlantUiWords.get("order.first")));
        OrderBars bars = Fit.wide(new OrderBars(room, theme));
        Scroller steps = new Scroller(room, theme);
        Fit.grow(steps.control());
        Label caution = controls.text(room, Type.SMALL, PlantTerms.said("order.caution"));
        caution.setForeground(theme.color(theme.palette().quiet()));
        caution.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        open = Optional.of(new Open(line, products, demands, said, bars, steps));
    }

    /** Proposes every product of the line that may be changed to and from, in the order in which they are stated. */
    private void propose(PlantState plant, Open now) {
        now.line().line().ifPresent(line -> {
            now.products()
                    .setText(String.join(
                            ", ",
                            plant.productsOf(line.id()).stream()
                                    .filter(product -> product.stated())
                                    .limit(wickbench.plant.order.DayPlanner.PROVEN)
                                    .map(product -> product.id())
                                    .toList()));
            plan();
        });
    }

    private void plan() {
        open.ifPresent(now -> now.line().line().ifPresent(line -> {
            String typed = now.products().getText();
            Demands.Typed demands = now.demands().typed();
            context.jobs()
                    .run(
                            PlantUiWords.get("order.planning"),
                            progress -> DayAsked.plan(doors.book(), line.id(), typed, demands),
                            this::show,
                            failure -> {
                                nothing();
                                say(Meaning.ALARM, String.valueOf(failure.getMessage()));
                            });
        }));
    }

    /** Takes the last plan off: what is shown must be the answer to what is asked. */
    private void nothing() {
        open.ifPresent(now -> {
            now.bars().show(List.of());
            clear(now.steps().content());
            now.steps().measure();
        });
    }

    private void say(Meaning meaning, String text) {
        open.ifPresent(now -> now.said().say(meaning, text));
        room.layout(true, true);
        context.ready();
    }

    private void show(DayAsked day) {
        Open now = open.orElseThrow();
        List<OrderBars.Day> bars = new ArrayList<>(
                List.of(new OrderBars.Day(PlantUiWords.get("bars.entered"), day.changes(day.entered()))));
        day.best().ifPresent(best -> bars.add(new OrderBars.Day(PlantUiWords.get("bars.best"), day.changes(best))));
        now.bars().show(bars);
        clear(now.steps().content());
        day.best().ifPresent(best -> steps(now.steps().content(), day, best));
        now.steps().measure();
        say(day.best().isPresent() ? Meaning.NOTICE : Meaning.CAUTION, day.says());
    }

    private void steps(Composite into, DayAsked day, List<Integer> best) {
        Controls controls = context.theme().controls();
        Composite grid = Fit.wide(controls.box(into, 3));
        List<Changeover> changes = day.changes(best);
        IntStream.range(0, best.size()).forEach(place -> {
            controls.label(grid, Type.STRONG, PlantUiWords.get("order.place", place + 1));
            controls.label(grid, Type.BODY, day.products().get(best.get(place)).name());
            String change =
                    place == 0 ? "" : ChangeMarks.of(changes.get(place - 1)).word();
            Label words = controls.label(grid, Type.BODY, change);
            words.setForeground(context.theme().color(context.theme().palette().quiet()));
        });
    }

    /** Proposes the products of a line. */
    @Override
    public void show(String line) {
        wanted = Optional.of(line);
        reload();
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.products().setFocus());
    }
}
