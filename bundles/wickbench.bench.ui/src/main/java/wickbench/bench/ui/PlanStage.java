package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** The plan of the run, what speaks against its start, and whether its alarms will be heard. */
final class PlanStage implements RunStage {
    private final PageContext context;
    private final BenchDoors doors;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private final Bell bell;
    private final Composite box;
    private final Scroller scroll;
    private final Label sums;
    private final RunGantt gantt;
    private final StartChecks checks;
    private final Label words;
    private final Button begin;
    private Optional<StartCheck> check = Optional.empty();
    private Optional<Bell.Trouble> silent = Optional.empty();
    private boolean beginning;
    private String trouble = "";

    /** What is asked before a run. */
    private record Asked(StartCheck check, Optional<Bell.Trouble> silent) {}

    PlanStage(
            Composite parent,
            PageContext context,
            BenchDoors doors,
            RunHand hand,
            RunTimetable timetable,
            RunActs acts,
            Bell bell) {
        this.context = context;
        this.doors = doors;
        this.hand = hand;
        this.timetable = timetable;
        this.acts = acts;
        this.bell = bell;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        scroll = new Scroller(box, theme);
        Fit.grow(scroll.control());
        Composite plan = Fit.wide(controls.card(scroll.content(), 1));
        sums = controls.text(plan, Type.HEADING, "");
        gantt = Fit.wide(new RunGantt(plan, theme));
        checks = new StartChecks(scroll.content(), theme);
        Composite bar = Fit.wide(controls.box(box, 4));
        words = controls.text(bar, Type.BODY, "");
        Wide.button(controls.button(bar, FlowWords.get("plan.tone"), () -> bell.ring(Bell.Sound.TRIAL)), theme);
        Wide.button(controls.button(bar, FlowWords.get("plan.back"), this::back), theme);
        begin = Wide.button(controls.mainButton(bar, FlowWords.get("plan.begin"), this::begin), theme);
        Enter.heard(box, this::begin);
        new PageKeys(box, Map.of(SWT.F11, () -> bell.ring(Bell.Sound.TRIAL), SWT.F3, this::back, SWT.F5, this::begin));
    }

    @Override
    public Composite control() {
        return box;
    }

    RunGantt gantt() {
        return gantt;
    }

    String said() {
        return words.getText();
    }

    /** Returns why alarms would not be heard, if they would not. */
    Optional<Bell.Trouble> silent() {
        return silent;
    }

    Optional<StartCheck> check() {
        return check;
    }

    private List<RunStrip> strips() {
        return hand.state()
                .map(run -> run.strips().stream().map(strip -> strip.strip()).toList())
                .orElseGet(acts::draft);
    }

    @Override
    public void shown() {
        beginning = false;
        trouble = "";
        check = Optional.empty();
        if (hand.state().isPresent()) {
            timetable.replan(Duration.ZERO);
        } else {
            timetable.forget();
            timetable.plan(acts.draft());
        }
        List<RunStrip> strips = strips();
        context.jobs()
                .run(
                        FlowWords.get("gate.asking"),
                        progress -> new Asked(
                                StartCheck.ask(
                                        doors.door(),
                                        doors.advice(),
                                        strips,
                                        doors.home().clock().instant()),
                                bell.trouble()),
                        this::take,
                        failure -> refused(failure.getMessage()));
        begin.setText(FlowWords.get(hand.state().isPresent() ? "plan.go-on" : "plan.begin"));
        gantt.setFocus();
        tell();
    }

    private void take(Asked asked) {
        check = Optional.of(asked.check());
        silent = asked.silent();
        checks.show(asked.check(), asked.silent(), strips().size());
        scroll.measure();
        tell();
    }

    @Override
    public void tick(Moment now) {
        gantt.show(timetable.plan(), now);
        sums.setText(timetable
                .plan()
                .map(PlanSums::text)
                .orElse(
                        timetable.trouble().isEmpty()
                                ? FlowWords.get("planning")
                                : FlowWords.get("plan.trouble", timetable.trouble())));
        tell();
    }

    private void tell() {
        boolean refused = check.filter(StartCheck::refused).isPresent();
        boolean underWay = hand.state().isPresent();
        begin.setEnabled(underWay || check.isPresent() && !refused && !beginning);
        String asked = refused ? "plan.refused" : check.isEmpty() ? "gate.asking" : "plan.enter";
        words.setText(trouble.isEmpty() ? FlowWords.get(underWay ? "plan.under-way" : asked) : trouble);
        words.requestLayout();
    }

    private void back() {
        acts.go(hand.state().isPresent() ? Stage.CLOCK : Stage.NEW);
    }

    void begin() {
        if (hand.state().isPresent()) {
            acts.go(Stage.CLOCK);
        } else if (begin.isEnabled()) {
            beginning = true;
            acts.begin(this::refused);
        }
    }

    private void refused(String why) {
        beginning = false;
        trouble = why;
        tell();
    }
}
