package wickbench.bench.ui;

import java.util.Optional;
import java.util.function.Function;
import wickbench.api.method.Method;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.StripState;
import wickbench.widgets.StripDrawing;

/** One strip as it is read: its lines are answered and kept, by a second reader too where one is asked for, and then judged. */
final class StripReading {
    private final Function<RunStrip, Optional<Method>> methods;
    private final ReadActs kept;
    private final StripCard card;
    private final SecondReader second;
    private final ReadVerdict verdict;
    private final Runnable changed;
    private final Runnable turned;

    /**
     * @param methods finds the method of a strip, while it is in force
     * @param changed hears that something is to be shown anew
     * @param turned hears that something else is to be done now, by somebody else perhaps
     */
    StripReading(
            Function<RunStrip, Optional<Method>> methods,
            ReadActs kept,
            StripCard card,
            SecondReader second,
            ReadVerdict verdict,
            Runnable changed,
            Runnable turned) {
        this.methods = methods;
        this.kept = kept;
        this.card = card;
        this.second = second;
        this.verdict = verdict;
        this.changed = changed;
        this.turned = turned;
        drawing().onAnswer((role, seen) -> answered());
    }

    private StripDrawing drawing() {
        return card.drawing();
    }

    /** Opens a strip whose number was confirmed; every line is unanswered, also for a second reader. */
    void open(int number) {
        kept.open(number);
        StripState strip = kept.strip().orElseThrow();
        Phase phase = kept.phase();
        boolean again = phase == Phase.SECOND;
        boolean done = phase.over() || phase == Phase.KEPT;
        card.open(strip, methods.apply(strip.strip()));
        second.show(again, strip.kept().map(StripState.Answers::by));
        drawing().editable(!again && !done);
        verdict.waiting(number, FlowWords.get(again ? "read.second" : "read.answer"));
        if (done) {
            judge();
        }
        changed.run();
    }

    private void answered() {
        kept.answered();
        changed.run();
    }

    /** The second reader was named, and may answer now. */
    void secondNamed() {
        drawing().editable(true);
        turned.run();
        changed.run();
    }

    /** Keeps the answers, if none is lacking. */
    void keep() {
        if (!drawing().complete() || second.asks()) {
            changed.run();
        } else {
            kept.keep(drawing().answers(), second.named(), this::closed);
        }
    }

    /** No second reader came, or the strip was gone before anybody looked. */
    void nobody() {
        kept.nobody(() -> {
            second.show(false, Optional.empty());
            closed();
        });
    }

    /** No line can be answered any more; somebody else is asked, or the strip is judged. */
    private void closed() {
        drawing().editable(false);
        if (kept.phase() == Phase.SECOND) {
            open(kept.number());
        } else {
            judge();
        }
        turned.run();
    }

    private void judge() {
        verdict.judge(this::judged, kept::refuse);
    }

    private void judged(Judged judged) {
        drawing().answers(judged.reading().reading().strip().lines());
        changed.run();
    }
}
