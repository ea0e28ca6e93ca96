package wickbench.training.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.training.Call;
import wickbench.training.Round;

/** The strips of a round before one reader: which are called, which develop, which are to be read now. */
record CallRun(Round round, PersonId reader, StripStarts starts) {

    /** How far a strip is. */
    enum Phase implements Coded {
        WAITING,
        DEVELOPING,
        OPEN,
        MISSED,
        CALLED
    }

    /** Returns the round as it stands now, before the same reader. */
    CallRun with(Round now) {
        return new CallRun(now, reader, starts);
    }

    Phase phase(String code, Instant now) {
        if (call(code).isPresent()) {
            return Phase.CALLED;
        }
        Optional<Duration> elapsed = started(code).map(at -> Duration.between(at, now));
        if (elapsed.isEmpty()) {
            return Phase.WAITING;
        }
        if (round.plan().inside(elapsed)) {
            return Phase.OPEN;
        }
        return elapsed.get().compareTo(round.plan().develop()) < 0 ? Phase.DEVELOPING : Phase.MISSED;
    }

    /** Returns how long it is until the window of a started strip opens or, if it is open, closes. */
    Duration left(String code, Instant now) {
        Instant start = started(code).orElse(now);
        Duration to = phase(code, now) == Phase.DEVELOPING
                ? round.plan().develop()
                : round.plan().latest();
        return Duration.between(now, start.plus(to));
    }

    Optional<Instant> started(String code) {
        return starts.of(round.id(), reader, code);
    }

    void start(String code, Instant now) {
        starts.start(round.id(), reader, code, now);
    }

    void undo(String code) {
        starts.undo(round.id(), reader, code);
    }

    Optional<Call> call(String code) {
        return round.callsOf(reader).stream()
                .filter(call -> call.code().equals(code))
                .findFirst();
    }

    int called() {
        return round.callsOf(reader).size();
    }

    boolean over() {
        return called() == round.codes().size();
    }

    /** Tells whether a kept photograph is read in the strip's place. */
    boolean pictured(String code) {
        return round.photographs().containsKey(code);
    }

    /** Returns what to turn to: what is to be read now and closes first, what was missed, what waits, what develops. */
    Optional<String> next(Instant now) {
        return first(code -> phase(code, now) == Phase.OPEN, now)
                .or(() -> first(code -> phase(code, now) == Phase.MISSED, now))
                .or(() -> waiting(now))
                .or(() -> first(code -> phase(code, now) == Phase.DEVELOPING, now));
    }

    /** Returns the next strip to be started. */
    Optional<String> waiting(Instant now) {
        return codes().stream()
                .filter(code -> phase(code, now) == Phase.WAITING)
                .findFirst();
    }

    private Optional<String> first(Predicate<String> which, Instant now) {
        return codes().stream().filter(which).min(Comparator.comparing((String code) -> left(code, now)));
    }

    List<String> codes() {
        return round.codes();
    }
}
