package wickbench.bench.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Method;
import wickbench.bench.run.Alarm;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.PageKeys;

/** A run on the page, from its first sample to what is owed in the end: its parts, put together and kept up to date. */
final class RunFlow {
    private static final int TICK_MILLIS = 250;

    private final PageContext context;
    private final BenchDoors doors;
    private final Bell bell;
    private final Composite box;
    private final RunAlarm alarm;
    private final StageStack stages;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private final RunArrival arrival;
    private Choices choices = new Choices(List.of(), List.of());
    private Optional<SiteClock> clock = Optional.empty();

    RunFlow(Composite parent, PageContext context, BenchDoors doors, Bell bell) {
        this.context = context;
        this.doors = doors;
        this.bell = bell;
        box = context.theme().controls().box(parent, 1);
        alarm = new RunAlarm(box, context, bell);
        stages = new StageStack(box, context.theme(), this::made, this::refresh);
        hand = new RunHand(context, doors.runs(), this::refresh, this::rings);
        timetable = new RunTimetable(context, hand, () -> stages.tick(hand.now()));
        acts = new RunCourse(context, hand, timetable, alarm, stages, this::newRun, this::reading);
        arrival = new RunArrival(hand, timetable, acts);
        HeldKeys.watch(box);
        new PageKeys(box, Map.of(SWT.F9, alarm::heard));
    }

    private RunStage made(Composite parent, Stage stage) {
        return switch (stage) {
            case NEW -> new NewRunStage(parent, context, doors, hand, timetable, acts);
            case PLAN -> new PlanStage(parent, context, doors, hand, timetable, acts, bell);
            case CLOCK -> new ClockStage(parent, context, hand, timetable, this::method, acts, bell);
            case READ -> new ReadStage(parent, context, doors, hand, timetable, this::method, acts);
            case NEXT -> new NextStage(parent, context, doors, hand, timetable, () -> clock, acts);
        };
    }

    private Optional<Method> method(RunStrip strip) {
        return choices.method(strip.unread().method().value());
    }

    Composite control() {
        return box;
    }

    /** Takes what can be chosen from and the runs of before, and lets work begin. */
    void start(Choices some, SiteClock site, List<Run> open) {
        choices = some;
        clock = Optional.of(site);
        newRun().start(some, site);
        arrival.start(open);
        tick();
    }

    /** Goes where a link leads; returns false when it leads nowhere here. */
    boolean show(String link) {
        return arrival.show(link);
    }

    /** The page is closed; the run goes on. */
    void leave() {
        hand.leave();
    }

    void focus() {
        stages.focus();
    }

    private void rings(List<Alarm> alarms) {
        alarm.ring(alarms);
        refresh();
    }

    private void tick() {
        if (!box.isDisposed()) {
            refresh();
            box.getDisplay().timerExec(TICK_MILLIS, this::tick);
        }
    }

    private void refresh() {
        Moment now = hand.now();
        alarm.show(hand.state(), now);
        hand.state().ifPresent(state -> reading().recorded(state));
        stages.tick(now);
    }

    NewRunStage newRun() {
        return (NewRunStage) stages.at(Stage.NEW);
    }

    private ReadStage reading() {
        return (ReadStage) stages.at(Stage.READ);
    }

    StageStack stages() {
        return stages;
    }

    RunHand hand() {
        return hand;
    }

    RunTimetable timetable() {
        return timetable;
    }

    AlarmBand band() {
        return alarm.band();
    }
}
