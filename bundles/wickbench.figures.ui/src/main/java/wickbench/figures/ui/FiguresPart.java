package wickbench.figures.ui;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.journal.EntryRef;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Theme;

/** The page: the sums at the left, one of them at the right. */
final class FiguresPart implements PagePart {
    private final PageContext context;
    private final Doors doors;
    private final SumTree tree;
    private final Composite room;
    private final Map<String, Given> typed = new HashMap<>();
    private SumView view;

    /** What goes over to a new look: the chosen sum and what was typed everywhere. */
    private record Draft(String chosen, Map<String, Given> typed) {}

    FiguresPart(Composite parent, PageContext context, Doors doors) {
        this.context = context;
        this.doors = doors;
        Theme theme = context.theme();
        Composite page = theme.controls().box(parent, 1);
        new Heading(page, theme, FiguresUiWords.get("figures.heading"), FiguresUiWords.get("figures.line"));
        Composite halves = Fit.grow(theme.controls().box(page, 2));
        ((GridLayout) halves.getLayout()).horizontalSpacing = theme.metrics().grid(3);
        tree = new SumTree(halves, theme, this::open);
        room = Fit.grow(theme.controls().box(halves, 1));
        Sum first = Sums.find("samples").orElseThrow();
        tree.select(first);
        make(first);
        context.onActor(actor -> view.actor());
    }

    /** Shows a sum by its id, or a kept one by its entry. */
    @Override
    public void show(String argument) {
        Optional<Sum> sum = Sums.find(argument);
        sum.ifPresent(found -> {
            tree.select(found);
            open(found);
        });
        if (sum.isEmpty() && argument.indexOf(':') > 0) {
            context.jobs()
                    .run(
                            FiguresUiWords.get("kept.reading"),
                            progress -> doors.kept().find(EntryRef.parse(argument)),
                            found -> found.ifPresent(this::open));
        }
    }

    @Override
    public void focus() {
        tree.focus();
    }

    @Override
    public Optional<Object> draft() {
        keep();
        return Optional.of(new Draft(view.sum().id(), Map.copyOf(typed)));
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Draft kept) {
            typed.putAll(kept.typed());
            Sums.find(kept.chosen()).ifPresent(sum -> {
                view.control().dispose();
                tree.select(sum);
                make(sum);
            });
        }
    }

    private void open(Sum sum) {
        keep();
        view.control().dispose();
        make(sum);
    }

    /** Puts what was kept back into its form. */
    private void open(KeptSums.Kept kept) {
        Sums.find(kept.what().sum()).ifPresent(sum -> {
            keep();
            typed.put(sum.id(), kept.what().given());
            view.control().dispose();
            tree.select(sum);
            make(sum);
            context.say(FiguresUiWords.get("kept.opened", kept.entry()));
        });
    }

    private void make(Sum sum) {
        view = new SumView(room, context, doors, sum, Optional.ofNullable(typed.get(sum.id())), this::open);
        room.layout(true, true);
    }

    private void keep() {
        typed.put(view.sum().id(), view.typed());
    }
}
