package wickbench.bench.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.person.PersonId;

/**
 * A run as it stands.
 *
 * @param by who began it
 * @param strips by number
 * @param clockMoves how often the clock on the wall was moved while it lasted, and how far
 * @param resumed how often it was brought back
 */
public record RunState(
        UUID id,
        PersonId by,
        Moment begun,
        List<StripState> strips,
        List<Duration> clockMoves,
        int resumed,
        boolean closed) {
    public RunState {
        strips = List.copyOf(strips);
        clockMoves = List.copyOf(clockMoves);
    }

    static RunState begin(Moment at, RunEvent.Begun begun) {
        return new RunState(
                begun.run(),
                begun.by(),
                at,
                begun.strips().stream().map(StripState::of).toList(),
                List.of(),
                0,
                false);
    }

    public Optional<StripState> strip(int number) {
        return strips.stream().filter(strip -> strip.number() == number).findFirst();
    }

    /** Returns the strips of a phase; open windows come in the order in which they close, others by number. */
    public List<StripState> in(Phase phase, Moment now) {
        return strips.stream()
                .filter(strip -> strip.phase(now) == phase)
                .sorted(Urgency.first(now))
                .toList();
    }

    /** Returns the number that one more strip would get. */
    public int nextNumber() {
        return strips.stream().mapToInt(StripState::number).max().orElse(0) + 1;
    }

    /** Tells whether every strip is over. */
    public boolean over(Moment now) {
        return strips.stream().allMatch(strip -> strip.phase(now).over());
    }

    RunState with(StripState changed) {
        return withStrips(strips.stream()
                .map(strip -> strip.number() == changed.number() ? changed : strip)
                .toList());
    }

    RunState plus(RunStrip more) {
        List<StripState> all = new ArrayList<>(strips);
        all.add(StripState.of(more));
        return withStrips(all);
    }

    RunState moved(Duration by) {
        List<Duration> all = new ArrayList<>(clockMoves);
        all.add(by);
        return new RunState(id, this.by, begun, strips, all, resumed, closed);
    }

    RunState resumedOnce() {
        return new RunState(id, by, begun, strips, clockMoves, resumed + 1, closed);
    }

    RunState close() {
        return new RunState(id, by, begun, strips, clockMoves, resumed, true);
    }

    private RunState withStrips(List<StripState> all) {
        return new RunState(id, by, begun, all, clockMoves, resumed, closed);
    }
}
