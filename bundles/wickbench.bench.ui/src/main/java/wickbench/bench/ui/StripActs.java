package wickbench.bench.ui;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.StripState;

/** What is done to the strip whose number stands in the field, or else to the next one. */
final class StripActs {
    private static final Duration REST = Duration.ofMinutes(2);

    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private final NumberField number;
    private final Supplier<Optional<Integer>> next;
    private final Runnable started;
    private final Consumer<String> say;

    /**
     * @param next the strip to start next
     * @param started told when a strip was started
     */
    StripActs(
            RunHand hand,
            RunTimetable timetable,
            RunActs acts,
            NumberField number,
            Supplier<Optional<Integer>> next,
            Runnable started,
            Consumer<String> say) {
        this.hand = hand;
        this.timetable = timetable;
        this.acts = acts;
        this.number = number;
        this.next = next;
        this.started = started;
        this.say = say;
    }

    /** A number was confirmed: what it stands for depends on where its strip is. */
    void confirmed(int typed) {
        number.clear();
        Optional<StripState> strip = hand.state().flatMap(run -> run.strip(typed));
        Phase phase = strip.map(some -> some.phase(hand.now())).orElse(Phase.SKIPPED);
        if (strip.isEmpty()) {
            say.accept(FlowWords.get("number.unknown", typed));
            return;
        }
        switch (phase) {
            case WAITING -> start(typed);
            case OPEN, MISSED, LOOKING, SECOND -> acts.read(typed);
            case DEVELOPING, KEPT, RECORDED, SKIPPED ->
                say.accept(FlowWords.get("number.not-now", typed, RunTable.words(strip.get(), hand.now())));
        }
    }

    private void start(int strip) {
        boolean shaking = hand.state()
                .flatMap(run -> run.strip(strip))
                .filter(some -> some.preparation().underWay())
                .isPresent();
        if (shaking) {
            keep(new RunEvent.Shaken(strip));
        }
        hand.happened(
                new RunEvent.Started(strip),
                run -> {
                    say.accept(FlowWords.get("said.started", strip));
                    started.run();
                    timetable.replan(Duration.ZERO);
                },
                say);
    }

    void shake() {
        int strip = chosen();
        boolean underWay = hand.state()
                .flatMap(run -> run.strip(strip))
                .filter(some -> some.preparation().underWay())
                .isPresent();
        keep(underWay ? new RunEvent.Shaken(strip) : new RunEvent.Shaking(strip));
    }

    void later() {
        timetable.replan(REST);
        say.accept(FlowWords.get("said.later", REST.toMinutes()));
        number.focus();
    }

    void undo() {
        if (number.typed().isEmpty()) {
            say.accept(FlowWords.get("said.undo-which"));
            number.focus();
        } else {
            on(RunEvent.Undone::new);
        }
    }

    void skip() {
        on(RunEvent.Skipped::new);
    }

    private void on(IntFunction<RunEvent> event) {
        keep(event.apply(chosen()));
    }

    private int chosen() {
        return number.typed().orElseGet(() -> next.get().orElse(0));
    }

    private void keep(RunEvent event) {
        number.clear();
        hand.happened(
                event,
                run -> {
                    say.accept(FlowWords.get(
                            "said." + event.getClass().getSimpleName().toLowerCase(Locale.ROOT),
                            ((RunEvent.OfStrip) event).strip()));
                    timetable.replan(Duration.ZERO);
                },
                say);
        number.focus();
    }
}
