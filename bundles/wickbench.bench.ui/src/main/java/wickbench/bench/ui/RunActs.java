package wickbench.bench.ui;

import java.util.List;
import java.util.function.Consumer;
import wickbench.bench.run.RunStrip;

/** What a stage of a run asks of the others, and where it leads; all on the UI thread. */
interface RunActs {
    /** Returns the strips of a run that has not begun. */
    List<RunStrip> draft();

    /** Begins the run with the strips that were entered. */
    void begin(Consumer<String> refused);

    /** Goes to the strip whose number was confirmed. */
    void read(int strip);

    /** Ends the run. */
    void close(Consumer<String> refused);

    /** Fills in a run for what is owed; finishes the one before it, if that is over. */
    void runOwed(Consumer<String> refused);

    /** Fills in a run for something due; says so where one is under way. */
    void runDue(String key);

    void go(Stage stage);

    /** Goes to where the run under way goes on. */
    void goOn();

    /** Goes to the form for one more strip of this run. */
    void oneMore();

    /** Somebody has heard the alarm. */
    void heard();
}
