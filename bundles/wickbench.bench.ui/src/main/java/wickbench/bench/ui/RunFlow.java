package wickbench.bench.ui;

import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.bench.run.Alarm;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunPlanning;
import wickbench.bench.run.RunPlanning.Planned;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.PageKeys;

/** A run on the page, from its first sample to what is owed in the end. */
final class RunFlow implements RunActs {
    private static final int TICK_MILLIS = 250;

    /** Before the key of something due that is to be run. */
    private static final String DUE = "due:";

    private final PageContext context;
    private final BenchDoors doors;
    private final Bell bell;
    private final Composite box;
    private final StepBar steps;
    private final AlarmBand band;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final Map<Stage, RunStage> stages = new EnumMap<>(Stage.class);
    private final RunTimetable timetable;
    private final RunHand hand;
    private Choices choices = new Choices(List.of(), List.of());
    private Optional<SiteClock> clock = Optional.empty();
    private Optional<String> wanted = Optional.empty();
    private Stage stage = Stage.NEW;

    RunFlow(Composite parent, PageContext context, BenchDoors doors, Bell bell) {
        this.context = context;
        this.doors = doors;
        this.bell = bell;
        box = context.theme().controls().box(parent, 1);
        band = new AlarmBand(box, context.theme());
        steps = Fit.wide(new StepBar(box, context.theme()));
        stack = Fit.grow(new Composite(box, SWT.NONE));
        stack.setBackground(box.getBackground());
        stack.setLayout(layout);
        hand = new RunHand(context, this::refresh, this::rings);
        timetable = new RunTimetable(context, doors.runs()::now, () -> at(stage).tick(now()));
        HeldKeys.watch(box);
        new PageKeys(box, Map.of(SWT.F9, this::heard));
    }

    Composite control() {
        return box;
    }

    /** Takes what can be chosen from and the runs of before, and lets work begin. */
    void start(Choices some, SiteClock site, List<Run> open) {
        choices = some;
        newRun().start(some, site);
        clock = Optional.of(site);
        Optional.ofNullable((NextStage) stages.get(Stage.NEXT)).ifPresent(next -> next.start(site));
        open.stream().findFirst().ifPresentOrElse(this::goOn, () -> go(Stage.NEW));
        tick();
    }

    private void goOn(Run before) {
        hand.take(before);
        timetable.replan(before.state(), Duration.ZERO);
        if (wanted.isEmpty()) {
            go(before.state().over(now()) ? Stage.NEXT : Stage.CLOCK);
        }
        wanted.ifPresent(this::show);
    }

    /** Goes to a stage by its code to a strip as {@code strip:3}, or fills in what is due as {@code due:KEY}; returns false when that names neither. */
    boolean show(String argument) {
        if (argument.startsWith(DUE)) {
            due(argument.substring(DUE.length()));
            return true;
        }
        boolean strip = argument.matches("strip:[0-9]{1,4}");
        Optional<Stage> named = Arrays.stream(Stage.values())
                .filter(some -> some.code().equals(argument))
                .findFirst();
        wanted = Optional.of(argument).filter(some -> hand.empty() && (strip || named.isPresent()));
        if (strip && !hand.empty()) {
            read(Integer.parseInt(argument.substring("strip:".length())));
        } else if (!hand.empty()) {
            named.ifPresent(this::go);
        }
        return strip || named.isPresent();
    }

    private void due(String key) {
        if (hand.empty()) {
            go(Stage.NEW);
            newRun().due(key);
        } else {
            context.say(FlowWords.get("owed.underway"));
        }
    }

    /** The page is closed; the run goes on. */
    void leave() {
        hand.leave();
    }

    private void rings(List<Alarm> alarms) {
        band.ring();
        refresh();
        Alarm first = alarms.get(0);
        alarms.stream()
                .map(Alarm::kind)
                .sorted()
                .findFirst()
                .ifPresent(kind -> bell.ring(Bell.Sound.valueOf(kind.name())));
        context.say(FlowWords.get("say." + first.kind().code(), first.strip()));
    }

    private void tick() {
        if (!box.isDisposed()) {
            refresh();
            box.getDisplay().timerExec(TICK_MILLIS, this::tick);
        }
    }

    private void refresh() {
        Moment now = now();
        hand.state().ifPresentOrElse(state -> band.show(state, now), band::hide);
        hand.state().ifPresent(state -> reading().recorded(state));
        at(stage).tick(now);
    }

    void focus() {
        at(stage).shown();
    }

    /** The stage, made when it is first asked for: the window is there sooner with one than with five. */
    RunStage at(Stage some) {
        return stages.computeIfAbsent(some, this::made);
    }

    private RunStage made(Stage some) {
        return switch (some) {
            case NEW -> new NewRunStage(stack, context, doors, this);
            case PLAN -> new PlanStage(stack, context, doors, this, bell, timetable);
            case CLOCK -> new ClockStage(stack, context, this, bell);
            case READ -> new ReadStage(stack, context, doors, this);
            case NEXT -> {
                NextStage next = new NextStage(stack, context, doors, this);
                clock.ifPresent(next::start);
                yield next;
            }
        };
    }

    Stage stage() {
        return stage;
    }

    /** Tells whether a plan is being made. */
    boolean planning() {
        return timetable.underWay();
    }

    AlarmBand band() {
        return band;
    }

    NewRunStage newRun() {
        return (NewRunStage) at(Stage.NEW);
    }

    private ReadStage reading() {
        return (ReadStage) at(Stage.READ);
    }

    @Override
    public Moment now() {
        return doors.runs().now();
    }

    @Override
    public Optional<RunState> state() {
        return hand.state();
    }

    @Override
    public List<RunStrip> draft() {
        return newRun().strips();
    }

    @Override
    public Optional<Method> method(RunStrip strip) {
        return choices.method(strip.unread().method().value());
    }

    @Override
    public Optional<Planned> plan() {
        return timetable.plan();
    }

    @Override
    public void replan(Duration rest) {
        state().ifPresent(state -> timetable.replan(state, rest));
    }

    @Override
    public void pace(RunPlanning planning) {
        timetable.planning(planning);
    }

    @Override
    public void happened(RunEvent event, Consumer<RunState> done, Consumer<String> refused) {
        hand.happened(event, done, refused);
    }

    @Override
    public void judged(Consumer<List<Judged>> done, Consumer<String> refused) {
        hand.judged(done, refused);
    }

    @Override
    public void begin(Consumer<String> refused) {
        PersonId by = newRun().by().orElseThrow();
        hand.then(
                doors.runs().begin(draft(), by),
                begun -> {
                    hand.take(begun);
                    replan(Duration.ZERO);
                    go(Stage.CLOCK);
                },
                refused);
    }

    @Override
    public void read(int strip) {
        heard();
        reading().open(strip);
        go(Stage.READ);
    }

    @Override
    public void close(Consumer<String> refused) {
        hand.close(
                closed -> {
                    reading().recorded(closed);
                    hand.leave();
                    newRun().another();
                    go(Stage.NEW);
                    context.say(FlowWords.get("say.closed"));
                },
                refused);
    }

    @Override
    public void runOwed(Consumer<String> refused) {
        Optional<RunState> before = state();
        if (before.isEmpty()) {
            go(Stage.NEW);
            newRun().owed();
        } else if (before.get().over(now())) {
            hand.close(
                    closed -> {
                        reading().recorded(closed);
                        hand.leave();
                        newRun().another();
                        runOwed(refused);
                    },
                    refused);
        } else {
            refused.accept(FlowWords.get("owed.underway"));
        }
    }

    @Override
    public void go(Stage next) {
        stage = next;
        steps.show(next);
        layout.topControl = at(next).control();
        stack.layout();
        refresh();
        focus();
        // a stage that was never in front is laid out first, and a control without a size keeps no focus
        box.getDisplay().asyncExec(this::focusIfLost);
    }

    private void focusIfLost() {
        if (box.isDisposed() || !box.isVisible()) {
            return;
        }
        Control at = box.getDisplay().getFocusControl();
        while (at != null && at != layout.topControl) {
            at = at.getParent();
        }
        if (at == null) {
            focus();
        }
    }

    @Override
    public void oneMore() {
        newRun().forRun(!hand.empty());
        go(Stage.NEW);
    }

    @Override
    public void heard() {
        band.answered();
    }
}
