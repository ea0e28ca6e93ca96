package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunStrip;

/** What becomes of the strip on the form: it waits in the list until its run begins, or joins the run under way. */
final class NewRunActs {
    private final StripEntry entry;
    private final NewStrips strips;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private final NewRunHearer hearer;
    private boolean joins;

    NewRunActs(
            StripEntry entry,
            NewStrips strips,
            RunHand hand,
            RunTimetable timetable,
            RunActs acts,
            NewRunHearer hearer) {
        this.entry = entry;
        this.strips = strips;
        this.hand = hand;
        this.timetable = timetable;
        this.acts = acts;
        this.hearer = hearer;
    }

    /** Starts over with another run; who, method and lot stay. */
    void another() {
        strips.put(List.of());
        joins = false;
        clear();
    }

    /** The next strip joins the run under way, or waits for a new one. */
    void forRun(boolean underWay) {
        joins = underWay;
        entry.look();
    }

    /** Tells whether the next strip joins the run under way. */
    boolean joins() {
        return joins;
    }

    void add() {
        Optional<RunStrip> strip = entry.strip(strips.next());
        if (strip.isEmpty()) {
            entry.look();
        } else if (joins) {
            join(strip.get());
        } else {
            strips.add(strip.get());
            clear();
            entry.focus(Item.SAMPLE);
        }
    }

    private void join(RunStrip strip) {
        hand.happened(
                new RunEvent.Added(strip),
                run -> {
                    clear();
                    timetable.replan(Duration.ZERO);
                    acts.go(Stage.CLOCK);
                },
                hearer::say);
    }

    private void clear() {
        entry.clear();
        hearer.listed("");
    }

    void removeLast() {
        if (!strips.isEmpty()) {
            strips.removeLast();
            hearer.listed("");
        }
    }

    /** Goes on to the plan, or back to the run under way; what stands whole on the form is a strip too. */
    void toPlan() {
        if (joins) {
            acts.go(Stage.CLOCK);
            return;
        }
        if (!entry.untouched()) {
            add();
        }
        if (!strips.isEmpty() && entry.untouched()) {
            acts.go(Stage.PLAN);
        }
    }
}
