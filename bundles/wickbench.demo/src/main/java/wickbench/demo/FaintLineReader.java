package wickbench.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;

/** One operator overlooks faint lines, until second readers and a blind round show it and the operator is trained again. */
final class FaintLineReader implements Chapter {
    private static final int WHICH = 6;
    private static final int SUSPENDED_AFTER_MONTHS = 8;
    private static final int TRAINED_AFTER_MONTHS = 9;
    private static final double MISSES = 0.6;
    private static final String DISAGREEMENT = "reader.disagreement";

    private final PersonId operator;
    private final Instant suspended;
    private final Instant trained;
    private final Share before = new Share();
    private final Share after = new Share();
    private final Share twiceBefore = new Share();
    private final Share twiceAfter = new Share();

    private FaintLineReader(PersonId operator, Instant suspended, Instant trained) {
        this.operator = operator;
        this.suspended = suspended;
        this.trained = trained;
    }

    static FaintLineReader in(Plant plant, Span span) {
        return new FaintLineReader(who(plant), span.startOf(suspendedOn(span)), span.startOf(restoredOn(span)));
    }

    @Override
    public double missesFaint(PersonId reader, double usual, Instant when) {
        return reader.equals(operator) && when.isBefore(trained) ? MISSES : usual;
    }

    static PersonId who(Plant plant) {
        return plant.operators().get(WHICH);
    }

    static LocalDate suspendedOn(Span span) {
        return span.after(SUSPENDED_AFTER_MONTHS);
    }

    static LocalDate restoredOn(Span span) {
        return span.after(TRAINED_AFTER_MONTHS);
    }

    /** From the suspension on until they are trained again. */
    @Override
    public boolean observed(PersonId reader, Instant when) {
        return reader.equals(operator) && when.isBefore(trained) && !when.isBefore(suspended);
    }

    @Override
    public void hear(RecordedReading recorded) {
        Reading reading = recorded.reading();
        if (reading.operator().equals(operator) && reading.observer().isEmpty()) {
            boolean untrained = reading.times()
                    .started()
                    .filter(start -> start.isBefore(trained))
                    .isPresent();
            if (lowPositive(reading)) {
                (untrained ? before : after).count(reading.strip().test() == Seen.NOT_SEEN);
            }
            if (reading.second().isPresent()) {
                (untrained ? twiceBefore : twiceAfter).count(disagreed(recorded));
            }
        }
    }

    private static boolean lowPositive(Reading reading) {
        return reading.sample().control().equals(Optional.of(RunControl.LOW_POSITIVE))
                && reading.strip().format().sandwich();
    }

    private static boolean disagreed(RecordedReading recorded) {
        return recorded.verdict().findings().stream().map(Finding::rule).anyMatch(DISAGREEMENT::equals);
    }

    @Override
    public Told told() {
        return new Told(
                "faint-line-reader",
                Stream.of(
                                before.told("low_positive_missed_before", "low_positive_before"),
                                after.told("low_positive_missed_after", "low_positive_after"),
                                twiceBefore.told("disagreed_before", "read_twice_before"),
                                twiceAfter.told("disagreed_after", "read_twice_after"))
                        .flatMap(List::stream)
                        .toList());
    }
}
