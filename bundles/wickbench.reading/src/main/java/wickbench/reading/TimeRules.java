package wickbench.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import wickbench.api.method.Method.Timing;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Times;

/** Whether the strip was read in its window; both ends stand. */
final class TimeRules {
    private TimeRules() {}

    static Stream<Finding> notStated(Case test) {
        Times times = test.reading().times();
        List<String> missing = Stream.concat(
                        times.started().isEmpty() ? Stream.of("started") : Stream.empty(),
                        times.read().isEmpty() ? Stream.of("read") : Stream.empty())
                .toList();
        return missing.isEmpty()
                ? Stream.empty()
                : Stream.of(Rule.voids("time.not-stated", String.join(", ", missing) + " not stated", "started, read"));
    }

    static Stream<Finding> readEarly(Case test) {
        return elapsed(test)
                .filter(time -> time.compareTo(earliest(test)) < 0)
                .map(time ->
                        Rule.voids("time.read-early", Spans.seconds(time), "at least " + Spans.seconds(earliest(test))))
                .stream();
    }

    static Stream<Finding> readLate(Case test) {
        return elapsed(test)
                .filter(time -> time.compareTo(latest(test)) > 0)
                .map(time ->
                        Rule.voids("time.read-late", Spans.seconds(time), "at most " + Spans.seconds(latest(test))))
                .stream();
    }

    private static Optional<Duration> elapsed(Case test) {
        return between(test.reading().times().started(), test.reading().times().read());
    }

    private static Duration earliest(Case test) {
        return test.method().timing().develop();
    }

    private static Duration latest(Case test) {
        Timing timing = test.method().timing();
        return timing.develop().plus(timing.window());
    }

    /** Returns the time from one instant to another in milliseconds, which is what an entry keeps of them. */
    static Optional<Duration> between(Optional<Instant> from, Optional<Instant> to) {
        BiFunction<Instant, Instant, Duration> span =
                (start, end) -> Duration.ofMillis(end.toEpochMilli() - start.toEpochMilli());
        return from.flatMap(start -> to.map(end -> span.apply(start, end)));
    }
}
