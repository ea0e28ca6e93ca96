package wickbench.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;

/** A week of a fridge, a reading each ten minutes, as the entry {@code fridge.logged} tells it. */
final class FridgeWeek {
    private static final int MINUTES = 10;
    private static final int READINGS = 7 * 24 * 60 / MINUTES;
    private static final long WIDTH_S = 1800;
    private static final double SPREAD = 0.12;
    private static final double SWING = 0.6;
    private static final double WARMER = 9.2;

    private final StockPlan.Cold fridge;
    private final Instant from;
    private final Optional<Instant> failed;
    private final List<BigDecimal> celsius = new ArrayList<>();

    /**
     * @param failed when its compressor stopped for nine hours, if it did
     */
    FridgeWeek(StockPlan.Cold fridge, Instant from, Optional<Instant> failed, Chance chance) {
        this.fridge = fridge;
        this.from = from;
        this.failed = failed;
        double middle = (fridge.low() + fridge.high()) / 2.0;
        for (int i = 0; i < READINGS; i++) {
            double swing = SWING * Math.sin(2 * Math.PI * i / 144);
            celsius.add(BigDecimal.valueOf(middle + swing + SPREAD * chance.normal() + warmer(at(i)))
                    .setScale(1, RoundingMode.HALF_UP));
        }
    }

    private Instant at(int reading) {
        return from.plus(Duration.ofMinutes((long) MINUTES * reading));
    }

    /** The air warms towards the room while the compressor stands, and cools faster than it warmed. */
    private double warmer(Instant at) {
        double hours = failed.map(start -> Duration.between(start, at).toMinutes() / 60.0)
                .orElse(-1.0);
        if (hours < 0) {
            return 0;
        }
        double reached = WARMER * (1 - Math.exp(-Math.min(hours, 9) / 2.2));
        return hours <= 9 ? reached : reached * Math.exp(-(hours - 9) / 0.8);
    }

    /** Returns when it was first too warm. */
    Optional<Instant> tooWarm() {
        return excursions().stream().map(Warm::from).findFirst();
    }

    /** A time above the range. */
    record Warm(Instant from, Instant to, BigDecimal peak, BigDecimal degreeHours) {}

    List<Warm> excursions() {
        List<Warm> found = new ArrayList<>();
        BigDecimal high = BigDecimal.valueOf(fridge.high());
        for (int i = 0; i < READINGS; i++) {
            int start = i;
            BigDecimal peak = BigDecimal.ZERO;
            BigDecimal above = BigDecimal.ZERO;
            while (i < READINGS && celsius.get(i).compareTo(high) > 0) {
                peak = peak.max(celsius.get(i));
                above = above.add(celsius.get(i).subtract(high));
                i++;
            }
            if (i > start) {
                BigDecimal hours = above.multiply(BigDecimal.valueOf(MINUTES))
                        .divide(BigDecimal.valueOf(60), 6, RoundingMode.HALF_UP);
                found.add(new Warm(at(start), at(i), peak, hours));
            }
        }
        return found;
    }

    Json.Obj body() {
        String file = fridge.logger() + "-" + from.toString().substring(0, 10) + ".csv";
        List<Warm> warm = excursions();
        return Json.object()
                .with("fridge", fridge.id())
                .with("file", file)
                .with(
                        "sha256",
                        Hash.ofContent((file + celsius).getBytes(StandardCharsets.UTF_8))
                                .hex())
                .with("bytes", READINGS * 22L)
                .with("rows", READINGS)
                .with("from", StockEntries.time(at(0)))
                .with("to", StockEntries.time(at(READINGS - 1)))
                .with("low", celsius.stream().reduce(BigDecimal::min).orElseThrow())
                .with("high", celsius.stream().reduce(BigDecimal::max).orElseThrow())
                .with(
                        "excursions",
                        Json.array(warm.stream().map(FridgeWeek::json).toList()))
                .with("excursions_in_all", warm.size())
                .with("spells", spells())
                .with("width_s", WIDTH_S)
                .with("trace", trace());
    }

    private static Json.Obj json(Warm each) {
        return Json.object()
                .with("cause", "warm")
                .with("from", StockEntries.time(each.from()))
                .with("to", StockEntries.time(each.to()))
                .with("peak", each.peak())
                .with("degree_hours", each.degreeHours());
    }

    private Json.Arr spells() {
        Map<BigDecimal, Integer> readings = new TreeMap<>();
        celsius.forEach(each -> readings.merge(each, 1, Integer::sum));
        return Json.array(readings.entrySet().stream()
                .map(each -> numbers(
                        each.getKey(),
                        BigDecimal.valueOf((long) MINUTES * each.getValue())
                                .divide(BigDecimal.valueOf(60), 6, RoundingMode.HALF_UP)))
                .toList());
    }

    private Json.Arr trace() {
        Map<Long, List<BigDecimal>> stretches = new TreeMap<>();
        for (int i = 0; i < READINGS; i++) {
            stretches
                    .computeIfAbsent(at(i).getEpochSecond() / WIDTH_S, place -> new ArrayList<>())
                    .add(celsius.get(i));
        }
        return Json.array(stretches.entrySet().stream()
                .map(each -> numbers(
                        BigDecimal.valueOf(each.getKey()),
                        each.getValue().stream().reduce(BigDecimal::min).orElseThrow(),
                        each.getValue().stream().reduce(BigDecimal::max).orElseThrow()))
                .toList());
    }

    private static Json.Arr numbers(BigDecimal... values) {
        return Json.array(List.of(values).stream().map(Json.Num::new).toList());
    }
}
