package wickbench.bench.ui;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Verdict;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunState;
import wickbench.reading.OutcomeWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What came of the run and what is owed because of it; repeats and dilutions are one key away while the extract is there. */
final class NextStage implements RunStage {
    private final PageContext context;
    private final RunActs acts;
    private final Composite box;
    private final Scroller scroll;
    private final Composite strips;
    private final OwedList owed;
    private final Button take;
    private final Label words;
    private final Button finish;
    private Optional<RunState> shown = Optional.empty();

    NextStage(Composite parent, PageContext context, BenchDoors doors, RunActs acts) {
        this.context = context;
        this.acts = acts;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        scroll = new Scroller(box, theme);
        Fit.grow(scroll.control());
        strips = Fit.wide(controls.box(scroll.content(), 1));
        owed = new OwedList(scroll.content(), context, doors, Integer.MAX_VALUE, this::owedLooked);
        Composite bar = Fit.wide(controls.box(box, 4));
        words = controls.text(bar, Type.STRONG, "");
        Wide.button(controls.button(bar, FlowWords.get("next.back"), () -> acts.go(Stage.CLOCK)), theme);
        take = Wide.button(controls.button(bar, FlowWords.get("owed.take"), this::runOwed), theme);
        finish = Wide.button(controls.mainButton(bar, FlowWords.get("next.finish"), this::finish), theme);
        Enter.heard(box, this::finish);
        new PageKeys(box, Map.of(SWT.F3, () -> acts.go(Stage.CLOCK), SWT.F4, this::runOwed, SWT.F12, this::finish));
    }

    @Override
    public Composite control() {
        return box;
    }

    String said() {
        return words.getText();
    }

    @Override
    public void shown() {
        shown = Optional.empty();
        tick(acts.now());
        scroll.control().setFocus();
    }

    @Override
    public void tick(Moment now) {
        boolean over = acts.state().filter(run -> run.over(now)).isPresent();
        finish.setEnabled(over);
        take.setEnabled(over && owed.byStrip());
        if (!acts.state().equals(shown)) {
            shown = acts.state();
            acts.judged(this::show, words::setText);
            owed.look();
            words.setText(FlowWords.get(over ? "next.over" : "next.open"));
            words.requestLayout();
        }
    }

    private void owedLooked() {
        scroll.measure();
        tick(acts.now());
    }

    OwedList owed() {
        return owed;
    }

    private void runOwed() {
        if (take.isEnabled()) {
            take.setEnabled(false);
            acts.runOwed(words::setText);
        }
    }

    private void show(List<RunActs.Judged> judged) {
        for (Control old : strips.getChildren()) {
            old.dispose();
        }
        judged.forEach(this::strip);
        if (judged.isEmpty()) {
            context.theme().controls().text(strips, Type.BODY, FlowWords.get("next.none"));
        }
        Enter.heard(strips, this::finish);
        strips.requestLayout();
        scroll.measure();
    }

    private void strip(RunActs.Judged judged) {
        Theme theme = context.theme();
        Composite card = Fit.wide(theme.controls().card(strips, 1));
        Composite head = Fit.wide(theme.controls().box(card, 3));
        BigDecimal dilution = judged.reading().reading().sample().dilution();
        Verdict verdict = judged.reading().verdict();
        theme.controls()
                .label(
                        head,
                        Type.HEADING,
                        FlowWords.get(
                                "next.strip",
                                judged.strip().number(),
                                judged.reading().reading().sample().code(),
                                judged.reading().reading().sample().place()));
        new Badge(head, theme, Mark.of(verdict.outcome(), dilution));
        List<String> owed = OutcomeWords.owed(verdict);
        if (owed.isEmpty()) {
            Fit.wide(theme.controls().quiet(head, BenchUiWords.get("verdict.owes-nothing")));
        } else {
            offer(Fit.right(theme.controls().box(head, 3)), judged, verdict);
        }
        if (judged.strip().recorded().isEmpty()) {
            Fit.wide(new MarkedLine(
                    card, theme, new Mark("", Shape.SQUARE, Meaning.NOTICE), FlowWords.get("next.waits")));
        }
        owed.forEach(what -> Fit.wide(new MarkedLine(card, theme, new Mark("", Shape.TRIANGLE, Meaning.ALARM), what)));
    }

    private void offer(Composite buttons, RunActs.Judged judged, Verdict verdict) {
        Controls controls = context.theme().controls();
        if (verdict.owed().contains(Owed.REPEAT)) {
            controls.button(buttons, FlowWords.get("next.repeat"), () -> again(judged, BigDecimal.ONE));
        }
        if (verdict.owed().contains(Owed.BRACKET) || verdict.owed().contains(Owed.REPEAT_DILUTED)) {
            controls.button(buttons, FlowWords.get("next.ten"), () -> again(judged, BigDecimal.TEN));
            controls.button(buttons, FlowWords.get("next.hundred"), () -> again(judged, new BigDecimal(100)));
        }
    }

    private void again(RunActs.Judged judged, BigDecimal thinner) {
        acts.happened(
                new RunEvent.Added(Repeats.of(judged.strip().strip(), thinner)),
                run -> {
                    acts.replan(java.time.Duration.ZERO);
                    acts.go(Stage.CLOCK);
                },
                words::setText);
    }

    private void finish() {
        if (finish.isEnabled()) {
            finish.setEnabled(false);
            acts.close(words::setText);
        }
    }
}
