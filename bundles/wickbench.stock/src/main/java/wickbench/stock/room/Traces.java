package wickbench.stock.room;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import wickbench.figures.store.Ageing;
import wickbench.figures.store.Spell;
import wickbench.figures.store.Warmth;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.FridgeTrace.Point;
import wickbench.stock.FridgeTrace.Source;
import wickbench.stock.room.FridgeJson.Log;
import wickbench.stock.room.FridgeRows.Kept;

/** Puts the logs of a fridge together for a stretch of time; figures are of the whole logs that reach into it. */
final class Traces {
    private Traces() {}

    static FridgeTrace of(Fridge fridge, List<Kept> all, Instant from, Instant to) {
        List<Kept> kept = all.stream()
                .filter(each ->
                        each.log().to().isAfter(from) && each.log().from().isBefore(to))
                .toList();
        List<Log> logs = kept.stream().map(Kept::log).toList();
        List<Spell> spells = logs.stream().flatMap(log -> log.spells().stream()).toList();
        Optional<Warmth> warmth = spells.isEmpty() ? Optional.empty() : Optional.of(Warmth.of(spells, Ageing.usual()));
        return new FridgeTrace(
                fridge,
                from,
                to,
                points(logs, from, to),
                excursions(logs, from, to),
                warmth.map(Warmth::kinetic),
                warmth.map(Warmth::mean),
                extreme(logs, log -> log.low().doubleValue()).min().stream()
                        .boxed()
                        .findFirst(),
                extreme(logs, log -> log.high().doubleValue()).max().stream()
                        .boxed()
                        .findFirst(),
                logs.stream().mapToLong(Log::rows).sum(),
                kept.stream().map(Traces::source).toList());
    }

    private static Source source(Kept kept) {
        return new Source(
                kept.entry(), kept.log().from(), kept.log().to(), kept.log().rows());
    }

    private static DoubleStream extreme(List<Log> logs, ToDoubleFunction<Log> which) {
        return logs.stream().mapToDouble(which);
    }

    private static List<Excursion> excursions(List<Log> logs, Instant from, Instant to) {
        return logs.stream()
                .flatMap(log -> log.excursions().stream())
                .filter(each -> each.to().isAfter(from) && each.from().isBefore(to))
                .sorted(Comparator.comparing(Excursion::from).thenComparing(Excursion::cause))
                .distinct()
                .toList();
    }

    private static List<Point> points(List<Log> logs, Instant from, Instant to) {
        List<Point> points = new ArrayList<>();
        for (Log log : logs) {
            Duration width = Duration.ofSeconds(log.widthSeconds());
            log.stretches()
                    .forEach(each -> points.add(new Point(
                            Instant.ofEpochSecond(each.place() * log.widthSeconds()), width, each.low(), each.high())));
        }
        return points.stream()
                .filter(point -> point.from().plus(point.width()).isAfter(from)
                        && point.from().isBefore(to))
                .sorted(Comparator.comparing(Point::from))
                .toList();
    }
}
