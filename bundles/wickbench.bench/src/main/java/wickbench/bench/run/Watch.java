package wickbench.bench.run;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Watches a run: rings what is due, and notes when somebody has moved the clock on the wall.
 *
 * <p>It waits for the next alarm, but never longer than a quarter of a second: waiting does not go on while the machine
 * sleeps, and a strip may be started meanwhile.
 */
final class Watch {
    static final Duration LONGEST_WAIT = Duration.ofMillis(250);
    /** What a time service corrects at once is less; somebody who sets the clock sets it further. */
    private static final Duration MOVED = Duration.ofSeconds(2);

    private final Clocks clocks;
    private final Later later;
    private final Supplier<RunState> run;
    private final Consumer<List<Alarm>> alarms;
    private final Consumer<Duration> moved;
    private final AlarmClock alarmClock = new AlarmClock();
    private Moment last;
    private volatile boolean over;

    Watch(Clocks clocks, Later later, Supplier<RunState> run, Consumer<List<Alarm>> alarms, Consumer<Duration> moved) {
        this.clocks = clocks;
        this.later = later;
        this.run = run;
        this.alarms = alarms;
        this.moved = moved;
        last = clocks.now();
    }

    void begin() {
        later.in(Duration.ZERO, this::look);
    }

    void end() {
        over = true;
    }

    private void look() {
        if (over) {
            return;
        }
        Moment now = clocks.now();
        Duration off = now.wallMovedSince(last);
        if (off.abs().compareTo(MOVED) > 0) {
            moved.accept(off);
        }
        last = now;
        RunState state = run.get();
        List<Alarm> due = alarmClock.ring(state, now);
        if (!due.isEmpty()) {
            alarms.accept(due);
        }
        later.in(wait(alarmClock.next(state, clocks.now())), this::look);
    }

    private static Duration wait(Optional<Duration> next) {
        return next.filter(in -> in.compareTo(LONGEST_WAIT) < 0).orElse(LONGEST_WAIT);
    }
}
