package wickbench.figures.ui;

import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.chart.ChartPainter;
import wickbench.figures.NoAnswer;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One sum: its form, the answer, the formula with its source, and the plot. */
final class SumView {
    private final PageContext context;
    private final Theme theme;
    private final Sum sum;
    private final Scroller scroller;
    private final SumForm form;
    private final Composite answer;
    private final ChartView plot;
    private int asked;

    SumView(Composite parent, PageContext context, Optional<ChartPainter> painter, Sum sum, Map<String, String> typed) {
        this.context = context;
        this.sum = sum;
        theme = context.theme();
        scroller = new Scroller(parent, theme);
        Fit.grow(scroller.control());
        Composite content = scroller.content();
        theme.controls().label(content, Type.HEADING, words(""));
        Fit.wide(theme.controls().text(content, Type.BODY, words(".line")));
        form = new SumForm(content, theme, sum, typed, this::compute);
        answer = Fit.wide(theme.controls().card(content, 1));
        Fit.wide(theme.controls().text(content, Type.BODY, words(".formula")));
        Fit.wide(theme.controls().text(content, Type.SMALL, words(".source")));
        plot = new ChartView(content, context, painter);
        Fit.wide(plot);
        compute();
    }

    Control control() {
        return scroller.control();
    }

    Sum sum() {
        return sum;
    }

    Map<String, String> typed() {
        return form.typed();
    }

    /** Only the newest question is answered; one that is still under way no longer matters. */
    private void compute() {
        int mine = ++asked;
        Given given = new Given(form.typed());
        context.jobs()
                .run(
                        words(""),
                        progress -> sum.compute().apply(given),
                        found -> ifNewest(mine, () -> show(found)),
                        failure -> ifNewest(mine, () -> refuse(failure)));
    }

    private void ifNewest(int mine, Runnable change) {
        if (mine == asked && !scroller.control().isDisposed()) {
            form.clear();
            for (Control child : answer.getChildren()) {
                child.dispose();
            }
            change.run();
            scroller.measure();
            context.ready();
        }
    }

    private void show(Answer found) {
        Answer.Figure first = found.figures().get(0);
        theme.controls().label(answer, Type.LARGE, first.text());
        theme.controls().label(answer, Type.BODY, FiguresUiWords.get(first.name()));
        Facts facts = new Facts(answer, theme);
        found.figures().stream().skip(1).forEach(figure -> facts.add(FiguresUiWords.get(figure.name()), figure.text()));
        found.charts().forEach(plot::chart);
        reveal(!found.charts().isEmpty());
    }

    private void refuse(Exception failure) {
        if (!(failure instanceof NoAnswer none)) {
            throw new IllegalStateException(failure);
        }
        String field = form.complain(none) ? FiguresUiWords.get("answer.see-field") : none.text();
        Fit.wide(new Note(answer, theme, Meaning.CAUTION, FiguresUiWords.get("answer.none", field)));
        reveal(false);
    }

    private void reveal(boolean plotted) {
        plot.setVisible(plotted);
        ((GridData) plot.getLayoutData()).exclude = !plotted;
    }

    private String words(String part) {
        return FiguresUiWords.get("sum." + sum.id() + part);
    }
}
