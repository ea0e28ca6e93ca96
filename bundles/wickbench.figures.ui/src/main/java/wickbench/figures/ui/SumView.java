package wickbench.figures.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.chart.Chart;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One sum: what it asks beside what it answers; where the room is narrow, the answer in words above, the rest below. */
final class SumView {
    private static final int BOTH = 740;
    private static final int LEAST_ASKED = 366;
    private static final double SHARE_ASKED = 0.42;

    private final PageContext context;
    private final Theme theme;
    private final Sum sum;
    private final Scroller scroller;
    private final Composite halves;
    private final SumForm form;
    private final Composite above;
    private final Composite beside;
    private final ChartView plot;
    private final Composite figures;
    private final KeepBar keep;
    private Optional<Worked> shown = Optional.empty();
    private boolean both;
    private int asked;

    SumView(
            Composite parent,
            PageContext context,
            Doors doors,
            Sum sum,
            Optional<Given> typed,
            Consumer<KeptSums.Kept> reopen) {
        this.context = context;
        this.sum = sum;
        theme = context.theme();
        scroller = new Scroller(parent, theme);
        Fit.grow(scroller.control());
        Composite content = scroller.content();
        theme.controls().label(content, Type.HEADING, sum.title());
        Fit.wide(theme.controls().text(content, Type.BODY, sum.line()));
        above = Fit.wide(theme.controls().card(content, 1));
        halves = Fit.wide(theme.controls().box(content, 2));
        ((GridLayout) halves.getLayout()).horizontalSpacing = theme.metrics().grid(3);
        Composite left = theme.controls().box(halves, 1);
        Composite right = theme.controls().box(halves, 1);
        form = new SumForm(left, context, sum, typed.orElseGet(sum::example), this::compute, scroller::measure);
        left.setVisible(!sum.inputs().isEmpty());
        beside = Fit.wide(theme.controls().card(right, 1));
        plot = Fit.wide(new ChartView(right, context, doors.painter()));
        figures = Fit.wide(theme.controls().card(right, 1));
        keep = new KeepBar(content, context, doors.kept(), sum, reopen, scroller::measure);
        scroller.control().addListener(SWT.Resize, event -> arrange(left, right));
        List.of(above, beside, figures).forEach(empty -> reveal(empty, false));
        arrange(left, right);
        compute();
    }

    Control control() {
        return scroller.control();
    }

    Sum sum() {
        return sum;
    }

    Given typed() {
        return form.given();
    }

    /** Hears that somebody signed in or out. */
    void actor() {
        keep.actor();
    }

    /** Beside one another where there is room for both. */
    private void arrange(Composite left, Composite right) {
        int width = scroller.control().getClientArea().width;
        boolean before = both;
        both = !sum.inputs().isEmpty() && width >= theme.px(BOTH);
        GridData asks = new GridData(SWT.FILL, SWT.BEGINNING, !both, false);
        asks.exclude = sum.inputs().isEmpty();
        asks.widthHint = both ? asked(left, width) : SWT.DEFAULT;
        left.setLayoutData(asks);
        right.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        ((GridLayout) halves.getLayout()).numColumns = both ? 2 : 1;
        if (both != before) {
            shown.ifPresent(this::words);
        }
        scroller.measure();
    }

    /** Long labels take what they need, so that no field is cut off, and leave half for the answer. */
    private int asked(Composite left, int width) {
        int usual = Math.max(theme.px(LEAST_ASKED), (int) (width * SHARE_ASKED));
        int needed = left.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        return Math.max(usual, Math.min(needed, width / 2));
    }

    /** What was reckoned, and its plot; both are worked out behind the screen. */
    private record Worked(Reckoned reckoned, Optional<Chart> chart) {
        static Worked of(Reckoned reckoned) {
            return new Worked(
                    reckoned,
                    reckoned instanceof Reckoned.Done done
                            ? done.answer().plot().map(Supplier::get)
                            : Optional.empty());
        }
    }

    /** Only the newest question is answered; one that is still under way no longer matters. */
    private void compute() {
        int mine = ++asked;
        Given given = form.given();
        context.jobs().run(sum.title(), progress -> Worked.of(sum.reckon(given)), worked -> {
            if (mine == asked && !scroller.control().isDisposed()) {
                show(worked);
            }
        });
    }

    private void show(Worked worked) {
        scroller.control().setRedraw(false);
        shown = Optional.of(worked);
        form.clear();
        words(worked);
        empty(figures);
        if (worked.reckoned() instanceof Reckoned.Done done) {
            new AnswerView(figures, theme).showFigures(sum, done.answer());
            keep.offer(Optional.of(done));
        } else {
            keep.offer(Optional.empty());
        }
        worked.chart().ifPresent(plot::chart);
        reveal(plot, worked.chart().isPresent());
        reveal(figures, figures.getChildren().length > 0);
        scroller.measure();
        scroller.control().setRedraw(true);
        context.ready();
    }

    /** Says the answer, or why there is none, where it is seen beside the form. */
    private void words(Worked worked) {
        empty(above);
        empty(beside);
        Composite card = both ? beside : above;
        if (worked.reckoned() instanceof Reckoned.Done done) {
            new AnswerView(card, theme).showWords(done.answer());
        } else {
            refuse(card, (Reckoned.Wrong) worked.reckoned());
        }
        reveal(above, above.getChildren().length > 0);
        reveal(beside, beside.getChildren().length > 0);
    }

    private static void empty(Composite card) {
        for (Control child : card.getChildren()) {
            child.dispose();
        }
    }

    private static void reveal(Control control, boolean visible) {
        control.setVisible(visible);
        ((GridData) control.getLayoutData()).exclude = !visible;
    }

    private void refuse(Composite card, Reckoned.Wrong wrong) {
        String why = form.complain(wrong)
                ? FiguresUiWords.get("answer.see-field", label(wrong.input()))
                : wrong.complaint().text();
        Fit.wide(new Note(card, theme, Meaning.CAUTION, AnswerView.escaped(FiguresUiWords.get("answer.none", why))));
    }

    private String label(String input) {
        return sum.input(input).map(sum::label).orElse(input);
    }
}
