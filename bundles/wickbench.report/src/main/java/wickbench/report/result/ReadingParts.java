package wickbench.report.result;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wickbench.api.method.Method;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.api.report.Section.Facts;
import wickbench.api.words.Decimals;
import wickbench.reading.ReadingWords;
import wickbench.report.ReportWords;
import wickbench.report.text.SiteClock;

/** Sample, times, people and method of a reading as facts. */
record ReadingParts(Reading reading, Method method, SiteClock clock, Names names) {

    Facts sample() {
        Sample sample = reading.sample();
        return new FactList()
                .add("sample", sample.code())
                .add("place", sample.place())
                .addIf("line", sample.line())
                .addIf("batch", sample.batch())
                .addIf("reason", reason(sample))
                .add("route", ReadingWords.text(reading.route()))
                .addIf("visual", sample.visual().map(ReadingWords::text))
                .addIf("area", sample.area().map(area -> Decimals.of(area) + " cm²"))
                .add("dilution", dilution(sample.dilution()))
                .addIf("control", sample.control().map(ReadingWords::text))
                .addIf("pre-checks", preChecks())
                .facts();
    }

    Facts times() {
        Times times = reading.times();
        return new FactList()
                .addIf("out-of-fridge", times.outOfFridge().map(clock::seconds))
                .addIf("extracted", times.extracted().map(clock::seconds))
                .addIf("shaken", times.shaken().map(ReadingParts::span))
                .addOrUnstated("started", times.started().map(clock::seconds))
                .addOrUnstated("read", times.read().map(clock::seconds))
                .addIf("elapsed", elapsed(times))
                .add("window", window())
                .facts();
    }

    Facts people() {
        return new FactList()
                .add("operator", names.of(reading.operator()))
                .addIf("observer", reading.observer().map(names::of))
                .addIf("second-reader", reading.second().map(second -> names.of(second.reader())))
                .add("origin", origin())
                .facts();
    }

    Facts procedure() {
        return new FactList()
                .add("method", method.ref() + " — " + method.title())
                .add("kit", ReportWords.get("fact.kit-lot", method.kit(), reading.lot()))
                .add(
                        "target",
                        ReportWords.get(
                                "fact.target-basis",
                                method.target().name(),
                                ReadingWords.text(method.target().basis())))
                .add("limit", limit())
                .addIf("positive-from", method.positiveFrom().map(this::inLimitUnit))
                .addIf("not-seen", joined(method.target().notSeen()))
                .addIf("cautions", joined(method.cautions()))
                .facts();
    }

    private Optional<String> reason(Sample sample) {
        Optional<String> code = sample.reason().map(ReadingWords::text);
        return sample.reasonText()
                .map(text -> code.map(known -> known + " — " + text).orElse(text))
                .or(() -> code);
    }

    private static String dilution(BigDecimal dilution) {
        return dilution.compareTo(BigDecimal.ONE) == 0
                ? ReportWords.get("fact.undiluted")
                : "×" + Decimals.of(dilution);
    }

    private Optional<String> preChecks() {
        return Optional.of(new TreeMap<>(reading.preChecks())
                        .entrySet().stream()
                                .map(check ->
                                        check.getKey() + " " + Decimals.of(check.getValue()))
                                .collect(Collectors.joining("\n")))
                .filter(text -> !text.isEmpty());
    }

    private static Optional<String> elapsed(Times times) {
        return times.started().flatMap(start -> times.read().map(read -> span(Duration.between(start, read))));
    }

    private String window() {
        Duration develop = method.timing().develop();
        return ReportWords.get(
                "fact.window-between",
                span(develop),
                span(develop.plus(method.timing().window())));
    }

    private String origin() {
        return reading.origin() instanceof Reading.Origin.Sheet sheet
                ? ReportWords.get("fact.origin-sheet", sheet.file(), sheet.line())
                : ReportWords.get("fact.origin-bench");
    }

    private String limit() {
        String at = method.limit()
                .probability()
                .map(some -> " " + ReportWords.get("fact.limit-probability", percent(some)))
                .orElse("");
        return method.limit().value() + " " + ReadingWords.text(method.limit().holds()) + at;
    }

    private String inLimitUnit(BigDecimal value) {
        return Decimals.of(value) + " " + method.limit().value().unit().symbol();
    }

    private static Optional<String> joined(List<String> texts) {
        return texts.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", texts));
    }

    private static String percent(BigDecimal share) {
        return Decimals.of(share.movePointRight(2).stripTrailingZeros());
    }

    /** Returns for example {@code 5 min 30 s}. */
    private static String span(Duration span) {
        BigDecimal seconds = BigDecimal.valueOf(span.toMillis(), 3);
        long minutes = span.toMinutes();
        BigDecimal rest = seconds.subtract(BigDecimal.valueOf(60 * minutes)).stripTrailingZeros();
        if (minutes == 0) {
            return Decimals.of(rest) + " s";
        }
        return rest.signum() == 0
                ? minutes + " min"
                : minutes + " min " + Decimals.of(rest.abs()) + " s";
    }
}
