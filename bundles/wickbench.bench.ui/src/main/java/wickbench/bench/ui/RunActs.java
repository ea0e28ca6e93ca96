package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wickbench.api.method.Method;
import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunPlanning;
import wickbench.bench.run.RunPlanning.Planned;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.StripState;

/** What the stages of a run can do and know; all on the UI thread. */
interface RunActs {
    Moment now();

    /** Returns the run under way. */
    Optional<RunState> state();

    /** Returns the strips of a run that has not begun. */
    List<RunStrip> draft();

    Optional<Method> method(RunStrip strip);

    Optional<Planned> plan();

    /** Plans what is left, with no new start within {@code rest}. */
    void replan(Duration rest);

    /** From now on plans with these times of hands and eyes. */
    void pace(RunPlanning planning);

    /** Keeps what happened just now; {@code done} hears once it stands on the disk, {@code refused} why it does not. */
    void happened(RunEvent event, Consumer<RunState> done, Consumer<String> refused);

    /** Judges what has been read so far, by number of strip. */
    void judged(Consumer<List<Judged>> done, Consumer<String> refused);

    /** A strip with its verdict. */
    record Judged(StripState strip, RecordedReading reading) {}

    /** Begins the run with the strips that were entered. */
    void begin(Consumer<String> refused);

    /** Goes to the strip whose number was confirmed. */
    void read(int strip);

    /** Ends the run. */
    void close(Consumer<String> refused);

    /** Fills in a run for what is owed; finishes the one before it, if that is over. */
    void runOwed(Consumer<String> refused);

    void go(Stage stage);

    /** Goes to the form for one more strip of this run. */
    void oneMore();

    /** Somebody has heard the alarm. */
    void heard();
}
