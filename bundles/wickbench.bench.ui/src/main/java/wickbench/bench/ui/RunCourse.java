package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wickbench.api.person.PersonId;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;

/** The course of a run: how it begins and ends, and which stage follows which. */
final class RunCourse implements RunActs {
    private final PageContext context;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunAlarm alarm;
    private final StageStack stages;
    private final Supplier<NewRunStage> newRun;
    private final Supplier<ReadStage> reading;

    RunCourse(
            PageContext context,
            RunHand hand,
            RunTimetable timetable,
            RunAlarm alarm,
            StageStack stages,
            Supplier<NewRunStage> newRun,
            Supplier<ReadStage> reading) {
        this.context = context;
        this.hand = hand;
        this.timetable = timetable;
        this.alarm = alarm;
        this.stages = stages;
        this.newRun = newRun;
        this.reading = reading;
    }

    @Override
    public List<RunStrip> draft() {
        return newRun.get().strips();
    }

    @Override
    public void begin(Consumer<String> refused) {
        PersonId by = newRun.get().by().orElseThrow();
        hand.begin(
                draft(),
                by,
                () -> {
                    timetable.replan(Duration.ZERO);
                    go(Stage.CLOCK);
                },
                refused);
    }

    @Override
    public void read(int strip) {
        heard();
        reading.get().open(strip);
        go(Stage.READ);
    }

    @Override
    public void close(Consumer<String> refused) {
        end(
                () -> {
                    go(Stage.NEW);
                    context.say(FlowWords.get("say.closed"));
                },
                refused);
    }

    @Override
    public void runOwed(Consumer<String> refused) {
        Optional<RunState> before = hand.state();
        if (before.isEmpty()) {
            go(Stage.NEW);
            newRun.get().owed();
        } else if (before.get().over(hand.now())) {
            end(() -> runOwed(refused), refused);
        } else {
            refused.accept(FlowWords.get("owed.underway"));
        }
    }

    @Override
    public void runDue(String key) {
        if (hand.empty()) {
            go(Stage.NEW);
            newRun.get().due(key);
        } else {
            context.say(FlowWords.get("owed.underway"));
        }
    }

    private void end(Runnable then, Consumer<String> refused) {
        hand.close(
                closed -> {
                    reading.get().recorded(closed);
                    newRun.get().another();
                    then.run();
                },
                refused);
    }

    @Override
    public void go(Stage stage) {
        stages.front(stage);
    }

    @Override
    public void goOn() {
        go(hand.state().map(run -> Stage.of(run, hand.now())).orElse(Stage.CLOCK));
    }

    @Override
    public void oneMore() {
        newRun.get().forRun(!hand.empty());
        go(Stage.NEW);
    }

    @Override
    public void heard() {
        alarm.heard();
    }
}
