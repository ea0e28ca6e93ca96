package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
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
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** The changes of a line as a matrix; the chosen one explains itself beside it. */
final class ChangesRoom implements Room {
    private final PageContext context;
    private final PlantDoors doors;
    private final Composite room;
    private Optional<Open> open = Optional.empty();
    private Optional<String> wanted = Optional.empty();

    private record Open(LinePick line, MatrixGrid grid, ScrolledComposite scroll, Scroller side) {}

    private record Known(PlantState plant, List<List<Changeover>> rows) {}

    ChangesRoom(Composite parent, PageContext context, PlantDoors doors) {
        this.context = context;
        this.doors = doors;
        room = context.theme().controls().box(parent, 1);
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        Optional<String> line =
                wanted.or(() -> open.flatMap(now -> now.line().line()).map(chosen -> chosen.id()));
        context.jobs().run(PlantUiWords.get("changes.reading"), progress -> known(line), this::take);
    }

    private Known known(Optional<String> asked) {
        var now = doors.book().now();
        PlantState plant = doors.book().at(now);
        Optional<String> line = asked.filter(id -> plant.line(id).isPresent())
                .or(() -> plant.lines().stream()
                        .map(each -> each.id())
                        .filter(id -> plant.productsOf(id).size() > 1)
                        .findFirst());
        List<Product> products = line.map(plant::productsOf).orElse(List.of());
        if (products.isEmpty()) {
            return new Known(plant, List.of());
        }
        Changing changing = doors.book().changing(line.get(), now);
        return new Known(
                plant,
                products.stream()
                        .map(from -> products.stream()
                                .map(to -> changing.of(from, to))
                                .toList())
                        .toList());
    }

    private void take(Known known) {
        if (open.isEmpty()) {
            for (Control child : room.getChildren()) {
                child.dispose();
            }
            if (known.rows().isEmpty()) {
                Nothing.yet(room, context, "empty");
            } else {
                fill();
            }
        }
        open.ifPresent(now -> {
            now.line().offer(known.plant());
            wanted.ifPresent(now.line()::choose);
            wanted = Optional.empty();
            now.grid().show(known.rows());
            now.grid().setSize(now.grid().computeSize(SWT.DEFAULT, SWT.DEFAULT));
            now.scroll().setMinSize(now.grid().getSize());
        });
        room.layout(true, true);
        context.ready();
    }

    private void fill() {
        Controls controls = context.theme().controls();
        Composite bar = controls.row(room);
        LinePick line = new LinePick(bar, context, chosen -> reload());
        controls.quiet(bar, PlantUiWords.get("changes.how"));
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        ScrolledComposite scroll = new ScrolledComposite(sash, SWT.H_SCROLL | SWT.V_SCROLL);
        scroll.setBackground(room.getBackground());
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        MatrixGrid grid = new MatrixGrid(scroll, context.theme(), this::explain);
        scroll.setContent(grid);
        Scroller side = new Scroller(sash, context.theme());
        sash.setWeights(66, 34);
        open = Optional.of(new Open(line, grid, scroll, side));
    }

    private void explain(Changeover change) {
        open.ifPresent(now -> {
            for (Control child : now.side().content().getChildren()) {
                child.dispose();
            }
            card(now.side().content(), change);
            now.side().measure();
        });
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
