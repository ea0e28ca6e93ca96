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
import wickbench.api.lot.LotId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;

/** What quality keeps in mind of the strips of each line: when a point was good last, and what was made since. */
final class LineBook {
    private final Map<UUID, Strip> strips = new HashMap<>();
    private final Map<String, List<Strip>> byLine = new HashMap<>();

    private final Map<String, List<Strip>> byBatch = new HashMap<>();
    private final Map<LotId, List<Strip>> byLot = new HashMap<>();
    private final List<Strip> holding = new ArrayList<>();

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
            add(byLine, strip.line(), strip);
            add(byLot, recorded.reading().lot(), strip);
            strip.sample().batch().ifPresent(batch -> add(byBatch, batch, strip));
            if (strip.holds()) {
                holding.add(strip);
            }
        }
    }

    private static <K> void add(Map<K, List<Strip>> to, K key, Strip strip) {
        to.computeIfAbsent(key, none -> new ArrayList<>()).add(strip);
    }

    Optional<Strip> strip(UUID id) {
        return Optional.ofNullable(strips.get(id));
    }

    Stream<Strip> ofLine(String line) {
        return byLine.getOrDefault(line, List.of()).stream();
    }

    Stream<Strip> ofBatch(String batch) {
        return byBatch.getOrDefault(batch, List.of()).stream();
    }

    Stream<Strip> ofLot(LotId lot) {
        return byLot.getOrDefault(lot, List.of()).stream();
    }

    /** Returns what holds or held of a line. */
    Stream<Strip> holds(String line) {
        return holding.stream().filter(strip -> strip.line().equals(line));
    }

    Optional<Strip> lastGood(Strip before) {
        return ofLine(before.line())
                .filter(other -> other.samePoint(before) && other.good())
                .filter(other -> other.at().isBefore(before.at()))
                .max(Comparator.comparing(Strip::at));
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
