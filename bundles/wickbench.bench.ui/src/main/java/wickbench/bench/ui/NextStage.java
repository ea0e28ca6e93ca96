package wickbench.bench.ui;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Verdict;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunState;
import wickbench.reading.OutcomeWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** What came of the run and what is owed because of it; repeats and dilutions are one key away while the extract is there. */
final class NextStage implements RunStage {
    private static final int OWED = 165;

    private final PageContext context;
    private final RunActs acts;
    private final Composite box;
    private final Scroller scroll;
    private final Composite strips;
    private final OwedTable owed;
    private final OwedLook look;
    private final OwedActs decisions;
    private final Button clean;
    private final Button neighbours;
    private final Button decide;
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
        Composite card = Fit.grow(controls.card(box, 1));
        // in a low window the strips scroll, and several rows of what is owed stay in sight
        ((GridData) card.getLayoutData()).minimumHeight = theme.px(OWED);
        owed = new OwedTable(card, theme, this::enable);
        OwedForm form = new OwedForm(card, context, this::left);
        look = new OwedLook(context, doors, this::owedLooked, owed::say);
        decisions = new OwedActs(context, doors, form, this::by, this::say, look::look);
        words = Fit.wide(controls.text(box, Type.STRONG, ""));
        Composite bar = Fit.right(controls.box(box, 6));
        Wide.button(controls.button(bar, FlowWords.get("next.back"), this::back), theme);
        clean = Wide.button(controls.button(bar, FlowWords.get("owed.clean"), this::clean), theme);
        neighbours = Wide.button(controls.button(bar, FlowWords.get("owed.name"), this::neighbours), theme);
        decide = Wide.button(controls.button(bar, FlowWords.get("owed.settle"), this::decide), theme);
        take = Wide.button(controls.button(bar, FlowWords.get("next.take"), this::runOwed), theme);
        finish = Wide.button(controls.mainButton(bar, FlowWords.get("next.finish"), this::finish), theme);
        Enter.heard(box, this::finish);
        new PageKeys(
                box,
                Map.of(
                        SWT.F3, this::back,
                        SWT.F4, this::runOwed,
                        SWT.F5, this::clean,
                        SWT.F7, this::neighbours,
                        SWT.F8, this::decide,
                        SWT.F12, this::finish));
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
        if (acts.state().isEmpty()) {
            show(List.of());
            look.look();
            say(FlowWords.get("next.no-run"));
        }
        owed.control().setFocus();
    }

    /** Takes the clock by which the site tells its times. */
    void start(SiteClock site) {
        decisions.clock(site);
    }

    @Override
    public void tick(Moment now) {
        boolean over = over(now);
        finish.setEnabled(over);
        take.setEnabled((over || acts.state().isEmpty()) && look.byStrip());
        if (!acts.state().equals(shown)) {
            shown = acts.state();
            acts.judged(this::show, this::say);
            look.look();
            say(FlowWords.get(over ? "next.over" : "next.open"));
        }
    }

    private boolean over(Moment now) {
        return acts.state().filter(run -> run.over(now)).isPresent();
    }

    private void owedLooked(List<OwedDue> open) {
        if (!box.isDisposed()) {
            owed.show(open);
            enable();
            tick(acts.now());
        }
    }

    /** Only what may be done about what is chosen can be pressed. */
    private void enable() {
        Optional<OwedDue> chosen = owed.chosen();
        clean.setEnabled(chosen.filter(OwedActs::cleanable).isPresent());
        neighbours.setEnabled(chosen.filter(OwedActs::hasNeighbours).isPresent());
        decide.setEnabled(chosen.isPresent());
    }

    private Optional<PersonId> by() {
        return context.actor().or(() -> acts.state().map(RunState::by));
    }

    private void left() {
        look.look();
        owed.control().setFocus();
    }

    private void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    private void clean() {
        owed.chosen().filter(OwedActs::cleanable).ifPresent(decisions::clean);
    }

    private void neighbours() {
        owed.chosen().filter(OwedActs::hasNeighbours).ifPresent(decisions::neighbours);
    }

    private void decide() {
        owed.chosen().ifPresent(decisions::settle);
    }

    private void back() {
        acts.go(acts.state().isPresent() ? Stage.CLOCK : Stage.NEW);
    }

    OwedTable owed() {
        return owed;
    }

    OwedLook look() {
        return look;
    }

    private void runOwed() {
        if (take.isEnabled()) {
            take.setEnabled(false);
            acts.runOwed(this::say);
        }
    }

    private void show(List<RunActs.Judged> judged) {
        for (Control old : strips.getChildren()) {
            old.dispose();
        }
        judged.forEach(this::strip);
        if (judged.isEmpty() && acts.state().isPresent()) {
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
                this::say);
    }

    private void finish() {
        if (finish.isEnabled()) {
            finish.setEnabled(false);
            acts.close(this::say);
        }
    }
}
