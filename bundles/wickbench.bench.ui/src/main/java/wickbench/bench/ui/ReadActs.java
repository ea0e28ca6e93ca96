package wickbench.bench.ui;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.StripState;

/** What is kept of the strip before its reader: that somebody looked, what they saw, or that nobody came. */
final class ReadActs {
    private final RunHand hand;
    private final RunTimetable timetable;
    private final Runnable refused;
    private int number;
    private boolean keeping;
    private boolean looked;
    private String refusal = "";

    /** @param refused hears that an act was refused */
    ReadActs(RunHand hand, RunTimetable timetable, Runnable refused) {
        this.hand = hand;
        this.timetable = timetable;
        this.refused = refused;
    }

    /** Begins anew with a strip. */
    void open(int strip) {
        number = strip;
        keeping = false;
        looked = false;
        refusal = "";
    }

    int number() {
        return number;
    }

    Optional<StripState> strip() {
        return hand.state().flatMap(run -> run.strip(number));
    }

    Phase phase() {
        return strip().map(strip -> strip.phase(hand.now())).orElse(Phase.SKIPPED);
    }

    /** Tells whether answers are being kept just now. */
    boolean keeping() {
        return keeping;
    }

    /** Returns why the last act was refused, until the next one. */
    String refusal() {
        return refusal;
    }

    /** A line was answered: of two quick answers only the first is the time of reading. */
    void answered() {
        refusal = "";
        if (!looked && (phase() == Phase.OPEN || phase() == Phase.MISSED)) {
            looked = true;
            hand.happened(new RunEvent.Looked(number), run -> {}, this::refuse);
        }
    }

    /** Keeps the answers of the first reader, or of a second one, once. */
    void keep(Map<LineRole, Seen> lines, Optional<PersonId> second, Runnable kept) {
        if (!keeping) {
            keeping = true;
            PersonId reader = strip().orElseThrow().strip().unread().operator();
            happened(
                    second.<RunEvent>map(other -> new RunEvent.Second(number, other, lines))
                            .orElseGet(() -> new RunEvent.Kept(number, reader, lines)),
                    kept);
        }
    }

    /** Keeps that no second reader came, or that the strip was gone before anybody looked. */
    void nobody(Runnable kept) {
        happened(phase() == Phase.SECOND ? new RunEvent.NoSecond(number) : new RunEvent.Lost(number), kept);
    }

    private void happened(RunEvent event, Runnable kept) {
        hand.happened(
                event,
                run -> {
                    keeping = false;
                    kept.run();
                    if (phase() != Phase.SECOND) {
                        timetable.replan(Duration.ZERO);
                    }
                },
                this::refuse);
    }

    /** An act was refused; why stands until the next one. */
    void refuse(String why) {
        keeping = false;
        looked = false;
        refusal = why;
        refused.run();
    }
}
