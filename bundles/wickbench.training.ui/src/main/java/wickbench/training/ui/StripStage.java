package wickbench.training.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import wickbench.drill.Drill;
import wickbench.drill.Optics;
import wickbench.drill.Shown;
import wickbench.drill.StripPicture;
import wickbench.drill.StripWindow;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Shows strip after strip and takes the answers, by key or button. */
final class StripStage {
    /** Between two strips, so that one is not compared with the other, and one key is not taken for two. */
    private static final int PAUSE_MILLIS = 300;

    private static final int WHOLE = 1000;

    private final PageContext context;
    private final Consumer<DrillState> answered;
    private final StripWindow window;
    private final Strip strip;
    private final Label number;
    private final ProgressBar bar;
    private DrillState state;

    /** A drill after an answer, and its next strip drawn. */
    private record Next(Drill drill, Optional<StripPicture> picture) {}

    StripStage(Composite room, PageContext context, DrillState state, Consumer<DrillState> answered, Runnable stop) {
        this.context = context;
        this.state = state;
        this.answered = answered;
        Theme theme = context.theme();
        window = new StripWindow(state.line());
        Composite halves = Fit.wide(theme.controls().box(room, 2));
        ((GridLayout) halves.getLayout()).horizontalSpacing = theme.metrics().grid(3);
        strip = new Strip(halves, theme, window, this::says);
        strip.addListener(SWT.KeyDown, this::key);
        strip.addListener(SWT.MouseDown, event -> strip.setFocus());
        Composite beside = theme.controls().box(halves, 1);
        beside.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        theme.controls().text(beside, Type.BODY, TrainingUiWords.get("strips.what"));
        number = theme.controls().label(beside, Type.STRONG, "");
        bar = Fit.wide(new ProgressBar(beside, SWT.HORIZONTAL));
        bar.setMaximum(WHOLE);
        Composite buttons = theme.controls().row(beside);
        theme.controls().button(buttons, TrainingUiWords.get("strips.seen"), () -> press(true));
        theme.controls().button(buttons, TrainingUiWords.get("strips.not"), () -> press(false));
        theme.controls().button(buttons, TrainingUiWords.get("drill.stop"), stop);
        Names.give(bar, () -> TrainingUiWords.get("strips.progress"));
        tell();
        next(progress -> state.drill());
    }

    void focus() {
        strip.setFocus();
    }

    private String says() {
        return TrainingUiWords.get("strips.says", number.getText());
    }

    private void tell() {
        Drill drill = state.drill();
        int at = drill.answers().size() + 1;
        int least = drill.plan().least();
        number.setText(
                at <= least
                        ? TrainingUiWords.get("strips.number", at, least)
                        : TrainingUiWords.get("strips.further", at, drill.plan().most()));
        number.requestLayout();
        bar.setSelection((int) Math.round(WHOLE * drill.done()));
    }

    private void key(Event event) {
        String typed = String.valueOf(Character.toUpperCase(event.character));
        if (typed.equals(TrainingUiWords.get("strips.key.seen"))) {
            answer(true);
        } else if (typed.equals(TrainingUiWords.get("strips.key.not"))) {
            answer(false);
        }
    }

    private void press(boolean seen) {
        strip.setFocus();
        answer(seen);
    }

    private void answer(boolean seen) {
        if (strip.shows()) {
            strip.hide();
            Drill before = state.drill();
            next(progress -> before.answered(seen));
        }
    }

    private void next(wickbench.widgets.Work<Drill> work) {
        context.jobs()
                .run(
                        TrainingUiWords.get("strips.drawing"),
                        progress -> {
                            Drill drill = work.run(progress);
                            return new Next(drill, drill.next().map(this::draw));
                        },
                        this::take);
    }

    private StripPicture draw(Shown shown) {
        return StripPicture.draw(Optics.USUAL, window, shown.contrast(), shown.seed());
    }

    private void take(Next next) {
        if (strip.isDisposed()) {
            return;
        }
        state = state.with(next.drill());
        answered.accept(state);
        next.picture().ifPresent(picture -> {
            tell();
            strip.getDisplay().timerExec(PAUSE_MILLIS, () -> {
                if (!strip.isDisposed()) {
                    strip.show(picture);
                }
            });
        });
    }
}
