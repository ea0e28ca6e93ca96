package wickbench.bench.ui;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunState;
import wickbench.bench.run.StripState;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The run under way: what to do now, every strip's state, the steps of the next one; its number starts a strip and opens it for reading. */
final class ClockStage implements RunStage {
    private static final Duration REST = Duration.ofMinutes(2);

    private final PageContext context;
    private final RunActs acts;
    private final Composite box;
    private final Label now;
    private final NumberField number;
    private final Label said;
    private final RunTable table;
    private final Guide guide;
    private Optional<Integer> next = Optional.empty();

    ClockStage(Composite parent, PageContext context, RunActs acts, Bell bell) {
        this.context = context;
        this.acts = acts;
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
        buttons(Fit.wide(controls.box(box, 8)), theme);
        new PageKeys(
                box,
                Map.of(
                        SWT.F2, this::shake,
                        SWT.F3, () -> acts.go(Stage.PLAN),
                        SWT.F4, guide::step,
                        SWT.F5, this::later,
                        SWT.F11, () -> on(RunEvent.Skipped::new),
                        SWT.F7, this::undo,
                        SWT.F8, acts::oneMore,
                        SWT.F12, () -> acts.go(Stage.NEXT)));
    }

    private void buttons(Composite bar, Theme theme) {
        Controls controls = theme.controls();
        ((GridLayout) bar.getLayout()).makeColumnsEqualWidth = true;
        button(bar, theme, "clock.shake", this::shake);
        button(bar, theme, "clock.step", guide::step);
        button(bar, theme, "clock.later", this::later);
        button(bar, theme, "clock.skip", () -> on(RunEvent.Skipped::new));
        button(bar, theme, "clock.undo", this::undo);
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
        acts.state().ifPresent(run -> show(run, at));
    }

    private void show(RunState run, Moment at) {
        NextAct act = NextAct.of(run, acts.plan(), at);
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
        guide.show(next.flatMap(run::strip), next.flatMap(run::strip).flatMap(strip -> acts.method(strip.strip())), at);
    }

    /** A number was confirmed: what it stands for depends on where its strip is. */
    private void confirmed(int typed) {
        number.clear();
        Optional<StripState> strip = acts.state().flatMap(run -> run.strip(typed));
        Phase phase = strip.map(some -> some.phase(acts.now())).orElse(Phase.SKIPPED);
        if (strip.isEmpty()) {
            say(FlowWords.get("number.unknown", typed));
            return;
        }
        switch (phase) {
            case WAITING -> start(typed);
            case OPEN, MISSED, LOOKING, SECOND -> acts.read(typed);
            case DEVELOPING, KEPT, RECORDED, SKIPPED ->
                say(FlowWords.get("number.not-now", typed, RunTable.words(strip.get(), acts.now())));
        }
    }

    private void start(int strip) {
        boolean shaking = acts.state()
                .flatMap(run -> run.strip(strip))
                .filter(some -> some.preparation().underWay())
                .isPresent();
        if (shaking) {
            keep(new RunEvent.Shaken(strip));
        }
        acts.happened(
                new RunEvent.Started(strip),
                run -> {
                    say(FlowWords.get("said.started", strip));
                    guide.first();
                    acts.replan(Duration.ZERO);
                },
                this::say);
    }

    private void shake() {
        int strip = chosen();
        boolean underWay = acts.state()
                .flatMap(run -> run.strip(strip))
                .filter(some -> some.preparation().underWay())
                .isPresent();
        keep(underWay ? new RunEvent.Shaken(strip) : new RunEvent.Shaking(strip));
    }

    private void later() {
        acts.replan(REST);
        say(FlowWords.get("said.later", REST.toMinutes()));
        number.focus();
    }

    private void undo() {
        if (number.typed().isEmpty()) {
            say(FlowWords.get("said.undo-which"));
            number.focus();
        } else {
            on(RunEvent.Undone::new);
        }
    }

    private void on(IntFunction<RunEvent> event) {
        keep(event.apply(chosen()));
    }

    private int chosen() {
        return number.typed().orElseGet(() -> next.orElse(0));
    }

    private void keep(RunEvent event) {
        number.clear();
        acts.happened(
                event,
                run -> {
                    say(FlowWords.get(
                            "said." + event.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT),
                            ((RunEvent.OfStrip) event).strip()));
                    acts.replan(Duration.ZERO);
                },
                this::say);
        number.focus();
    }

    private void say(String words) {
        said.setText(words);
        said.requestLayout();
    }
}
