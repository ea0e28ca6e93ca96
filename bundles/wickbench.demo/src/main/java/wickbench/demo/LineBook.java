package wickbench.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;

/** What quality keeps in mind of the strips of each line: when a point was good last, and what was made since. */
final class LineBook {
    private final Map<UUID, Strip> strips = new HashMap<>();
    private final Map<String, List<Strip>> byLine = new HashMap<>();

    /** A strip as far as it matters here. */
    record Strip(UUID id, RecordedReading recorded) {
        Sample sample() {
            return recorded.reading().sample();
        }

        String line() {
            return sample().line().orElse("");
        }

        Instant at() {
            return recorded.reading().times().started().orElseThrow();
        }

        boolean samePoint(Strip other) {
            return sample().place().equals(other.sample().place()) && sameMethod(other);
        }

        boolean sameMethod(Strip other) {
            return recorded.reading().method().equals(other.recorded().reading().method());
        }

        /** A Negative that speaks for its point: undiluted, and no control. */
        boolean good() {
            return recorded.verdict().outcome() == Outcome.NEGATIVE
                    && sample().control().isEmpty()
                    && sample().dilution().compareTo(BigDecimal.ONE) == 0;
        }

        boolean holds() {
            return recorded.verdict().holds() && sample().control().isEmpty();
        }

        boolean food() {
            return recorded.reading().route().food();
        }

        boolean because(Reason reason) {
            return sample().reason().equals(Optional.of(reason));
        }
    }

    void hear(UUID id, RecordedReading recorded) {
        if (recorded.reading().times().started().isPresent()
                && recorded.reading().sample().line().isPresent()) {
            Strip strip = new Strip(id, recorded);
            strips.put(id, strip);
            byLine.computeIfAbsent(strip.line(), none -> new ArrayList<>()).add(strip);
        }
    }

    Optional<Strip> strip(UUID id) {
        return Optional.ofNullable(strips.get(id));
    }

    Stream<Strip> ofLine(String line) {
        return byLine.getOrDefault(line, List.of()).stream();
    }

    Stream<Strip> all() {
        return strips.values().stream();
    }

    Optional<Strip> lastGood(Strip before) {
        return ofLine(before.line())
                .filter(other -> other.samePoint(before) && other.good())
                .filter(other -> other.at().isBefore(before.at()))
                .max(Comparator.comparing(Strip::at));
    }

    /** Returns when the last of these points was Negative after the clean; empty while one of them was not. */
    Optional<Instant> cleared(Strip positive, List<String> points) {
        Optional<Instant> cleaned = ofLine(positive.line())
                .filter(other -> other.sample().place().equals(positive.sample().place()))
                .filter(other -> other.at().isAfter(positive.at()) && !other.because(Reason.BEFORE_CLEANING))
                .filter(other -> other.because(Reason.AFTER_CLEANING) || positive.because(Reason.BEFORE_CLEANING))
                .map(Strip::at)
                .min(Comparator.naturalOrder());
        Optional<Instant> last = cleaned;
        for (String point : points) {
            Optional<Instant> good = cleaned.flatMap(from -> ofLine(positive.line())
                    .filter(other -> other.sample().place().equals(point) && other.sameMethod(positive))
                    .filter(other -> other.good() && !other.at().isBefore(from))
                    .map(Strip::at)
                    .min(Comparator.naturalOrder()));
            last = last.flatMap(known -> good.map(at -> at.isAfter(known) ? at : known));
        }
        return last;
    }

    /** Returns the batches that a strip puts in question: its own, and what its line made between two instants. */
    Set<String> made(Strip strip, Optional<Instant> after, Instant until) {
        Set<String> batches =
                new LinkedHashSet<>(strip.sample().batch().stream().toList());
        ofLine(strip.line())
                .filter(other -> after.map(other.at()::isAfter).orElse(true)
                        && !other.at().isAfter(until))
                .flatMap(other -> other.sample().batch().stream())
                .forEach(batches::add);
        return batches;
    }
}
