package wickbench.ledger.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.method.Method.Timing;
import wickbench.api.reading.Times;
import wickbench.widgets.Meaning;

/**
 * One stretch of time to be drawn to scale.
 *
 * @param length of the whole stretch, from its first moment
 * @param bands what the method asks for, or allows
 * @param marks what was done, in order
 */
record TimeTrack(String name, Duration length, List<Band> bands, List<Mark> marks) {
    /** A stretch with a meaning. */
    record Band(Duration from, Duration to, Meaning meaning, String words) {}

    /** Something done at a moment. */
    record Mark(Duration at, Instant when, String words) {}

    TimeTrack {
        bands = List.copyOf(bands);
        marks = List.copyOf(marks);
    }

    /** Returns the stretches that can be drawn of what was stated: before the start, and on the strip. */
    static List<TimeTrack> of(Times times, Timing timing) {
        return Stream.of(before(times, timing), strip(times, timing))
                .flatMap(Optional::stream)
                .toList();
    }

    /** From the first thing done to the start; out of the cold the kit must warm up, and an extract keeps for a while. */
    private static Optional<TimeTrack> before(Times times, Timing timing) {
        Optional<Instant> first = Stream.of(times.outOfFridge(), times.extracted())
                .flatMap(Optional::stream)
                .min(Instant::compareTo);
        Optional<Instant> end = times.started().or(times::read);
        if (first.isEmpty() || end.isEmpty() || !first.get().isBefore(end.get())) {
            return Optional.empty();
        }
        Instant origin = first.get();
        Duration length = Duration.between(origin, end.get());
        List<Band> bands = new ArrayList<>();
        times.outOfFridge()
                .flatMap(out -> timing.warmUp()
                        .map(asked ->
                                band(Duration.between(origin, out), asked, length, Meaning.NEUTRAL, "time.warm-up")))
                .ifPresent(bands::add);
        times.extracted()
                .flatMap(at -> timing.extractHold()
                        .map(keeps ->
                                band(Duration.between(origin, at), keeps, length, Meaning.CALM, "time.extract-keeps")))
                .ifPresent(bands::add);
        return Optional.of(new TimeTrack(
                LedgerUiWords.get("time.before"),
                length,
                bands,
                marks(
                        origin,
                        List.of(
                                step(times.outOfFridge(), "time.out"),
                                step(times.extracted(), "time.extracted"),
                                step(times.started(), "time.started")))));
    }

    private static Optional<TimeTrack> strip(Times times, Timing timing) {
        return times.started()
                .filter(start ->
                        times.read().filter(read -> read.isBefore(start)).isEmpty())
                .map(start -> {
                    Duration opens = timing.develop();
                    Duration closes = opens.plus(timing.window());
                    Duration read = times.read()
                            .map(end -> Duration.between(start, end))
                            .orElse(Duration.ZERO);
                    Duration last = read.compareTo(closes) > 0 ? read : closes;
                    // a little more than the last thing, so that one sees that it was the last
                    Duration length = last.plus(last.dividedBy(16));
                    return new TimeTrack(
                            LedgerUiWords.get("time.strip"),
                            length,
                            List.of(
                                    new Band(Duration.ZERO, opens, Meaning.NEUTRAL, LedgerUiWords.get("time.develops")),
                                    new Band(opens, closes, Meaning.CALM, LedgerUiWords.get("time.window"))),
                            marks(
                                    start,
                                    List.of(step(times.started(), "time.started"), step(times.read(), "time.read"))));
                });
    }

    private static Band band(Duration from, Duration lasts, Duration length, Meaning meaning, String key) {
        Duration to = from.plus(lasts);
        return new Band(from, to.compareTo(length) > 0 ? length : to, meaning, LedgerUiWords.get(key));
    }

    private record Step(Instant when, String words) {}

    private static Optional<Step> step(Optional<Instant> when, String key) {
        return when.map(at -> new Step(at, LedgerUiWords.get(key)));
    }

    private static List<Mark> marks(Instant origin, List<Optional<Step>> steps) {
        return steps.stream()
                .flatMap(Optional::stream)
                .map(step -> new Mark(Duration.between(origin, step.when()), step.when(), step.words()))
                .toList();
    }
}
