package wickbench.figures.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.chart.ChartPainter;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The page: the sums at the left, one of them at the right. */
final class FiguresPart implements PagePart {
    private final PageContext context;
    private final Optional<ChartPainter> painter;
    private final List<Sum> sums = new ArrayList<>(SamplingSums.all());
    private final org.eclipse.swt.widgets.List list;
    private final Composite room;
    private final Map<String, Map<String, String>> typed = new HashMap<>();
    private SumView view;

    /** What goes over to a new look: the chosen sum and what was typed everywhere. */
    private record Draft(int chosen, Map<String, Map<String, String>> typed) {}

    FiguresPart(Composite parent, PageContext context, Optional<ChartPainter> painter) {
        this.context = context;
        this.painter = painter;
        sums.addAll(StoreSums.all());
        Theme theme = context.theme();
        Composite page = theme.controls().box(parent, 1);
        new Heading(page, theme, FiguresUiWords.get("figures.heading"), FiguresUiWords.get("figures.line"));
        Composite halves = Fit.grow(theme.controls().box(page, 2));
        ((GridLayout) halves.getLayout()).horizontalSpacing = theme.metrics().grid(3);
        list = new org.eclipse.swt.widgets.List(halves, SWT.SINGLE | SWT.V_SCROLL);
        theme.controls().style(list, Type.BODY);
        sums.forEach(sum -> list.add(FiguresUiWords.get("sum." + sum.id())));
        Names.give(list, () -> FiguresUiWords.get("figures.list"));
        Fit.tall(list);
        list.addListener(SWT.Selection, event -> open(list.getSelectionIndex()));
        room = Fit.grow(theme.controls().box(halves, 1));
        list.select(0);
        open(0);
    }

    @Override
    public void show(String argument) {
        for (int i = 0; i < sums.size(); i++) {
            if (sums.get(i).id().equals(argument)) {
                list.select(i);
                open(i);
            }
        }
    }

    @Override
    public void shown() {
        list.setFocus();
    }

    @Override
    public Optional<Object> draft() {
        keep();
        return Optional.of(new Draft(list.getSelectionIndex(), Map.copyOf(typed)));
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Draft kept) {
            typed.putAll(kept.typed());
            view.control().dispose();
            list.select(kept.chosen());
            make(kept.chosen());
        }
    }

    private void open(int which) {
        if (view != null) {
            keep();
            view.control().dispose();
        }
        make(which);
    }

    private void make(int which) {
        Sum sum = sums.get(which);
        view = new SumView(room, context, painter, sum, typed.getOrDefault(sum.id(), Map.of()));
        room.layout(true, true);
    }

    private void keep() {
        typed.put(view.sum().id(), view.typed());
    }
}
