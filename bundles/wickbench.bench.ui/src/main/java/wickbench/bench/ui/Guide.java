package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Step;
import wickbench.bench.run.Moment;
import wickbench.bench.run.StripState;
import wickbench.widgets.Fit;
import wickbench.widgets.MinSec;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The steps for the strip that starts next, in the site's words; one key goes on, and a step that lasts has its time counted. */
final class Guide {
    private static final int WIDTH = 340;

    private final Theme theme;
    private final Bell bell;
    private final Composite card;
    private final Label head;
    private final Label present;
    private final Label timer;
    private final Scroller scroll;
    private Optional<Method> shown = Optional.empty();
    private int at;
    private Optional<Moment> begun = Optional.empty();
    private boolean rung;
    private Optional<Moment> clock = Optional.empty();

    Guide(Composite parent, Theme theme, Bell bell) {
        this.theme = theme;
        this.bell = bell;
        card = theme.controls().card(parent, 1);
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = theme.px(WIDTH);
        card.setLayoutData(data);
        head = Fit.wide(theme.controls().label(card, Type.HEADING, ""));
        present = theme.controls().text(card, Type.STRONG, "");
        timer = Fit.wide(theme.controls().label(card, Type.LARGE, ""));
        scroll = new Scroller(card, theme);
        Fit.grow(scroll.control());
    }

    /** Shows the steps of a strip's method; begins them anew when the method is another. */
    void show(Optional<StripState> strip, Optional<Method> method, Moment now) {
        clock = Optional.of(now);
        if (!method.equals(shown)) {
            shown = method;
            fill();
            first();
        }
        String words =
                strip.map(some -> FlowWords.get("guide.head", some.number())).orElse(FlowWords.get("guide.none"));
        if (!head.getText().equals(words)) {
            head.setText(words);
        }
        time(now);
    }

    private List<Step> steps() {
        return shown.map(Method::steps).orElse(List.of());
    }

    private void fill() {
        for (Control old : scroll.content().getChildren()) {
            old.dispose();
        }
        new MethodSteps(scroll.content(), theme).fill(steps());
        scroll.measure();
    }

    /** Goes back to the first step, for the next strip. */
    void first() {
        at = 0;
        enter();
    }

    /** The present step is done. */
    void step() {
        if (at < steps().size()) {
            at++;
        }
        enter();
    }

    private void enter() {
        begun = clock;
        rung = false;
        boolean over = at >= steps().size();
        present.setText(
                over
                        ? FlowWords.get(shown.isPresent() ? "guide.over" : "guide.nothing")
                        : FlowWords.get(
                                "guide.step",
                                at + 1,
                                steps().size(),
                                steps().get(at).text()));
        card.layout(true, true);
    }

    String present() {
        return present.getText();
    }

    private void time(Moment now) {
        Optional<Duration> lasts = at < steps().size() ? steps().get(at).lasts() : Optional.empty();
        String words = "";
        if (lasts.isPresent() && begun.isPresent()) {
            Duration left = lasts.get().minus(now.after(begun.get()).span());
            words = left.isNegative() || left.isZero()
                    ? FlowWords.get("guide.done")
                    : FlowWords.get("guide.left", MinSec.of(left));
            if (!left.isNegative() && !left.isZero()) {
                rung = false;
            } else if (!rung) {
                rung = true;
                bell.ring(Bell.Sound.STEP);
            }
        }
        if (!timer.getText().equals(words)) {
            timer.setText(words);
            timer.requestLayout();
        }
    }
}
