package wickbench.bench.ui;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The controls of one strip: fields at the left, the strip and what it says at the right, what can be done below. */
final class StripView {
    /** Narrower than this, the strip stands below the fields. */
    private static final int TWO_COLUMNS = 760;

    private static final int NARROWEST = 260;

    private final Theme theme;
    private final Composite box;
    private final Scroller scroll;
    private final EntryForm form;
    private final Label title;
    private final Badge clock;
    private final StripDrawing drawing;
    private final VerdictPanel verdict;
    private final ActionBar bar;

    StripView(Composite parent, Theme theme, StripActs acts) {
        this.theme = theme;
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        scroll = new Scroller(box, theme);
        Fit.grow(scroll.control());
        Composite columns = Fit.wide(controls.box(scroll.content(), 2));
        form = new EntryForm(columns, box, theme, acts::now, acts::changed);
        Composite right = controls.box(columns, 1);
        Composite card = Fit.wide(controls.card(right, 1));
        title = controls.text(card, Type.HEADING, BenchUiWords.get("strip.no-method"));
        clock = new Badge(card, theme, Type.STRONG, notStarted());
        drawing = new StripDrawing(card, theme, StripSize.LARGE);
        drawing.editable(true);
        verdict = new VerdictPanel(right, theme);
        bar = new ActionBar(box, theme, acts::record, acts::next, acts::again);
        GridData data = new GridData(SWT.FILL, SWT.BEGINNING, false, false);
        right.setLayoutData(data);
        GridData fields = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        fields.minimumWidth = theme.px(NARROWEST);
        form.control().setLayoutData(fields);
        box.addListener(SWT.Resize, event -> arrange(columns, data));
    }

    private void arrange(Composite columns, GridData right) {
        boolean two = box.getClientArea().width >= theme.px(TWO_COLUMNS);
        ((GridLayout) columns.getLayout()).numColumns = two ? 2 : 1;
        right.grabExcessHorizontalSpace = !two;
        right.widthHint = two ? theme.px(480) : SWT.DEFAULT;
        scroll.measure();
    }

    Composite control() {
        return box;
    }

    EntryForm form() {
        return form;
    }

    StripDrawing drawing() {
        return drawing;
    }

    VerdictPanel verdict() {
        return verdict;
    }

    ActionBar bar() {
        return bar;
    }

    /** Draws the strip of a method, all its lines unanswered. */
    void method(Optional<Method> method) {
        title.setText(method.map(Method::title).orElse(BenchUiWords.get("strip.no-method")));
        method.ifPresent(by -> drawing.strip(by.format(), by.marks()));
        drawing.setEnabled(method.isPresent());
    }

    void clock(Optional<StripClock> runs) {
        clock.show(runs.map(some -> new Mark(some.words(), shape(some), some.meaning()))
                .orElse(notStarted()));
    }

    private static Shape shape(StripClock clock) {
        return switch (clock.meaning()) {
            case CALM -> Shape.DISC;
            case CAUTION -> Shape.CROSS;
            default -> Shape.RING;
        };
    }

    private static Mark notStarted() {
        return new Mark(BenchUiWords.get("clock.none"), Shape.BAR, Meaning.NEUTRAL);
    }

    /** Lets the person change what stands here, or not. */
    void open(boolean may) {
        form.enabled(may);
        drawing.editable(may);
    }

    /** Hears Enter wherever the focus is, unless the control had a use for it. */
    void onEnter(Runnable act) {
        listenForEnter(box, act);
    }

    private static void listenForEnter(Control control, Runnable act) {
        control.addListener(SWT.Traverse, event -> {
            boolean button = (control.getStyle() & SWT.PUSH) != 0 && control instanceof Button;
            if (event.detail == SWT.TRAVERSE_RETURN && event.doit && !button) {
                event.doit = false;
                act.run();
            }
        });
        if (control instanceof Composite parent) {
            for (Control child : parent.getChildren()) {
                listenForEnter(child, act);
            }
        }
    }

    /** Brings the strip and the first fields into sight. */
    void showStrip() {
        scroll.reveal(title);
    }

    /** Brings what the strip says into sight. */
    void showVerdict() {
        scroll.reveal(verdict.control());
    }
}
