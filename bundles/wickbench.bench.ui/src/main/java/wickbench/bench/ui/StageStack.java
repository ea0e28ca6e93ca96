package wickbench.bench.ui;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.bench.run.Moment;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;

/** The stages of a run, one of them in front, below the bar that says which. */
final class StageStack {
    private final StepBar steps;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final Map<Stage, RunStage> stages = new EnumMap<>(Stage.class);
    private final BiFunction<Composite, Stage, RunStage> make;
    private final Runnable turned;
    private Stage front = Stage.NEW;

    /**
     * @param make makes a stage when it is first asked for: the window is there sooner with one than with five
     * @param turned hears that another stage is in front, before that takes the focus
     */
    StageStack(Composite parent, Theme theme, BiFunction<Composite, Stage, RunStage> make, Runnable turned) {
        this.make = make;
        this.turned = turned;
        steps = Fit.wide(new StepBar(parent, theme));
        stack = Fit.grow(new Composite(parent, SWT.NONE));
        stack.setBackground(parent.getBackground());
        stack.setLayout(layout);
    }

    RunStage at(Stage stage) {
        return stages.computeIfAbsent(stage, first -> make.apply(stack, first));
    }

    /** Returns which stage is in front. */
    Stage front() {
        return front;
    }

    void front(Stage next) {
        front = next;
        steps.show(next);
        layout.topControl = at(next).control();
        stack.layout();
        turned.run();
        focus();
        // a stage that was never in front is laid out first, and a control without a size keeps no focus
        stack.getDisplay().asyncExec(this::focusIfLost);
    }

    void tick(Moment now) {
        at(front).tick(now);
    }

    void focus() {
        at(front).shown();
    }

    private void focusIfLost() {
        if (stack.isDisposed() || !stack.isVisible()) {
            return;
        }
        Control at = stack.getDisplay().getFocusControl();
        while (at != null && at != layout.topControl) {
            at = at.getParent();
        }
        if (at == null) {
            focus();
        }
    }
}
