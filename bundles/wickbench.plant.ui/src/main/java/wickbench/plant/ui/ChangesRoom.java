package wickbench.plant.ui;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.Changing;
import wickbench.plant.product.Product;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.PlantTerms;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Side;
import wickbench.widgets.Type;

/** The changes of a line as a matrix; the chosen one explains itself beside it. */
final class ChangesRoom extends PlantRoom<ChangesRoom.Now> {
    private Optional<Open> open = Optional.empty();
    private volatile Optional<String> wanted = Optional.empty();
    private volatile Optional<String> line = Optional.empty();
    private Optional<Changeover> chosen = Optional.empty();

    private record Open(LinePick line, MatrixGrid grid, Side side) {}

    record Now(PlantState plant, PlantDoors.May may, List<List<Changeover>> rows) implements Known {}

    ChangesRoom(Composite parent, PageContext context, PlantDoors doors) {
        super(parent, context, doors, "changes.reading");
        reload();
    }

    @Override
    Now read(Optional<PersonId> actor) {
        Instant now = doors.book().now();
        PlantState plant = doors.book().at(now);
        Optional<String> of = wanted.or(() -> line)
                .filter(id -> plant.line(id).isPresent())
                .or(() -> plant.lines().stream()
                        .map(each -> each.id())
                        .filter(id -> plant.productsOf(id).size() > 1)
                        .findFirst());
        List<List<Changeover>> rows = of.map(
                        id -> rows(plant.productsOf(id), doors.book().changing(id, now)))
                .orElse(List.of());
        return new Now(plant, doors.may(actor, Act.KEEP_PLANT), rows);
    }

    private static List<List<Changeover>> rows(List<Product> products, Changing changing) {
        return products.stream()
                .map(from -> products.stream().map(to -> changing.of(from, to)).toList())
                .toList();
    }

    @Override
    void fill(Now now) {
        Controls controls = context.theme().controls();
        Composite bar = controls.row(room);
        LinePick pick = new LinePick(bar, context, picked -> {
            line = Optional.of(picked.id());
            reload();
        });
        controls.button(bar, PlantUiWords.get("change.this.open"), this::made);
        controls.quiet(bar, PlantUiWords.get("changes.how"));
        SashForm sash = halves();
        MatrixGrid grid = new MatrixGrid(sash, context.theme(), this::explain);
        Side side = new Side(sash, context.theme());
        sash.setWeights(66, 34);
        open = Optional.of(new Open(pick, grid, side));
    }

    @Override
    void take(Now known) {
        Open now = open.orElseThrow();
        now.line().offer(known.plant());
        wanted.ifPresent(id -> {
            line = wanted;
            now.line().choose(id);
        });
        wanted = Optional.empty();
        now.grid().show(known.rows());
        context.ready();
    }

    /** Explains a change; what comes anew while a form stands there leaves it alone. */
    private void explain(Changeover change) {
        boolean same = chosen.filter(before -> same(before, change)).isPresent();
        chosen = Optional.of(change);
        if (!asking() || !same) {
            shown();
            open.ifPresent(now -> now.side().fill(content -> card(content, change)));
        }
    }

    private static boolean same(Changeover one, Changeover other) {
        return one.line().equals(other.line())
                && one.from().id().equals(other.from().id())
                && one.to().id().equals(other.to().id());
    }

    private void made() {
        chosen.ifPresent(change -> ask(
                open.orElseThrow().side(),
                stand -> ChangeForm.open(
                        stand, change.line(), change.from().id(), change.to().id()),
                () -> explain(change)));
    }

    private void card(Composite content, Changeover change) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        List<String> lines = ChangeWords.explain(change);
        controls.text(card, Type.STRONG, lines.get(0));
        int faults = change.faults().size();
        lines.subList(1, 1 + faults).forEach(fault -> Fit.wide(new Note(card, context.theme(), Meaning.ALARM, fault)));
        lines.subList(1 + faults, lines.size()).forEach(line -> controls.text(card, Type.BODY, line));
        change.tests()
                .forEach(test -> Fit.wide(new MarkedLine(
                        card,
                        context.theme(),
                        new Mark("", Shape.DIAMOND, Meaning.NOTICE),
                        PlantUiWords.get("due.to-sample", test.place(), test.method()))));
        Fit.wide(new Note(content, context.theme(), Meaning.NOTICE, PlantTerms.said("change.caution")));
    }

    /** Shows the changes of a line. */
    @Override
    public void show(String line) {
        wanted = Optional.of(line);
        reload();
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.grid().setFocus());
    }
}
