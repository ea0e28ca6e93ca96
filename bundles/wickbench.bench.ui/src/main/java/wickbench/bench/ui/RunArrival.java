package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import wickbench.bench.run.Run;

/** Leads whoever comes to the page to where they want to be, or else to where the run of before goes on. */
final class RunArrival {
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private Optional<RunLink> wanted = Optional.empty();

    RunArrival(RunHand hand, RunTimetable timetable, RunActs acts) {
        this.hand = hand;
        this.timetable = timetable;
        this.acts = acts;
    }

    /** Takes the run of before, if there is one. */
    void start(List<Run> open) {
        open.stream().findFirst().ifPresentOrElse(this::goOn, () -> acts.go(Stage.NEW));
    }

    private void goOn(Run before) {
        hand.take(before);
        timetable.replan(Duration.ZERO);
        Optional<RunLink> link = wanted;
        wanted = Optional.empty();
        link.ifPresentOrElse(this::follow, acts::goOn);
    }

    /** Goes where a link leads; into a run only once that of before is known. Returns false when it leads nowhere here. */
    boolean show(String written) {
        Optional<RunLink> link = RunLink.of(written);
        if (link.isPresent() && link.get() instanceof RunLink.Due due) {
            acts.runDue(due.key());
        } else {
            wanted = link.filter(some -> hand.empty());
            link.filter(some -> !hand.empty()).ifPresent(this::follow);
        }
        return link.isPresent();
    }

    private void follow(RunLink link) {
        if (link instanceof RunLink.Strip strip && has(strip.number())) {
            acts.read(strip.number());
        } else if (link instanceof RunLink.At at) {
            acts.go(at.stage());
        } else {
            // a strip of another run, to which an old link leads
            acts.goOn();
        }
    }

    private boolean has(int strip) {
        return hand.state().flatMap(run -> run.strip(strip)).isPresent();
    }
}
