package wickbench.bench.ui;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The run under way: what to do now, every strip's state, the steps of the next one; its number starts a strip and opens it for reading. */
final class ClockStage implements RunStage {
    private final PageContext context;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final Function<RunStrip, Optional<Method>> methods;
    private final Composite box;
    private final Label now;
    private final NumberField number;
    private final Label said;
    private final RunTable table;
    private final Guide guide;
    private final StripActs pressed;
    private Optional<Integer> next = Optional.empty();

    /** @param methods finds the method of a strip, while it is in force */
    ClockStage(
            Composite parent,
            PageContext context,
            RunHand hand,
            RunTimetable timetable,
            Function<RunStrip, Optional<Method>> methods,
            RunActs acts,
            Bell bell) {
        this.context = context;
        this.hand = hand;
        this.timetable = timetable;
        this.methods = methods;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        Composite head = Fit.wide(controls.card(box, 2));
        ((GridLayout) head.getLayout()).horizontalSpacing = theme.metrics().grid(2);
        number = new NumberField(head, theme, this::confirmed, acts::heard);
        Composite words = Fit.wide(controls.box(head, 2));
        now = Fit.wide(controls.text(words, Type.LARGE, ""), 2);
        controls.label(words, Type.BODY, FlowWords.get("number.label"));
        said = controls.text(words, Type.STRONG, "");
        said.setForeground(theme.color(theme.tone(Meaning.NOTICE).ink()));
        ((GridLayout) words.getLayout()).horizontalSpacing = theme.metrics().grid(3);
        Composite columns = Fit.grow(controls.box(box, 2));
        table = new RunTable(Fit.grow(controls.card(columns, 1)), theme);
        Fit.grow(table.control());
        guide = new Guide(columns, theme, bell);
        pressed = new StripActs(hand, timetable, acts, number, () -> next, guide::first, this::say);
        buttons(Fit.wide(controls.box(box, 8)), theme, acts);
        new PageKeys(
                box,
                Map.of(
                        SWT.F2, pressed::shake,
                        SWT.F3, () -> acts.go(Stage.PLAN),
                        SWT.F4, guide::step,
                        SWT.F5, pressed::later,
                        SWT.F11, pressed::skip,
                        SWT.F7, pressed::undo,
                        SWT.F8, acts::oneMore,
                        SWT.F12, () -> acts.go(Stage.NEXT)));
    }

    private void buttons(Composite bar, Theme theme, RunActs acts) {
        Controls controls = theme.controls();
        ((GridLayout) bar.getLayout()).makeColumnsEqualWidth = true;
        button(bar, theme, "clock.shake", pressed::shake);
        button(bar, theme, "clock.step", guide::step);
        button(bar, theme, "clock.later", pressed::later);
        button(bar, theme, "clock.skip", pressed::skip);
        button(bar, theme, "clock.undo", pressed::undo);
        button(bar, theme, "clock.more", acts::oneMore);
        button(bar, theme, "clock.plan", () -> acts.go(Stage.PLAN));
        button(bar, theme, "clock.finish", () -> acts.go(Stage.NEXT));
    }

    private static void button(Composite bar, Theme theme, String word, Runnable act) {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.heightHint = theme.px(48);
        theme.controls().button(bar, FlowWords.get(word), act).setLayoutData(data);
    }

    @Override
    public Composite control() {
        return box;
    }

    @Override
    public void shown() {
        number.focus();
    }

    String said() {
        return said.getText();
    }

    String toDo() {
        return now.getText();
    }

    RunTable table() {
        return table;
    }

    Guide guide() {
        return guide;
    }

    @Override
    public void tick(Moment at) {
        hand.state().ifPresent(run -> show(run, at));
    }

    private void show(RunState run, Moment at) {
        NextAct act = NextAct.of(run, timetable.plan(), at);
        next = act.toStart();
        Theme theme = context.theme();
        if (!now.getText().equals(act.words())) {
            now.setText(act.words());
            now.setForeground(theme.color(
                    act.meaning() == Meaning.NEUTRAL
                            ? theme.palette().ink()
                            : theme.tone(act.meaning()).ink()));
        }
        table.show(run, at, next);
        guide.show(
                next.flatMap(run::strip), next.flatMap(run::strip).flatMap(strip -> methods.apply(strip.strip())), at);
    }

    private void confirmed(int typed) {
        pressed.confirmed(typed);
    }

    private void say(String words) {
        said.setText(words);
        said.requestLayout();
    }
}
