package wickbench.ledger.services;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.Origin;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.api.words.Decimals;
import wickbench.reading.ReadingWords;

/** Sample, strip and times of a reading, line by line. */
record ReadingText(Lines lines, SiteClock clock) {
    void add(RecordedReading stands) {
        lines.head("show.sample");
        sample(stands);
        lines.head("show.strip");
        strip(stands);
        lines.head("show.times");
        times(stands.reading().times());
    }

    private void sample(RecordedReading stands) {
        Reading reading = stands.reading();
        Sample sample = reading.sample();
        lines.fact("column.sample", sample.code());
        lines.fact("column.place", sample.place());
        lines.perhaps("column.line", sample.line());
        lines.perhaps("column.batch", sample.batch());
        lines.perhaps("show.reason", sample.reason().map(ReadingWords::text));
        lines.perhaps("show.reason-text", sample.reasonText());
        lines.perhaps("show.visual", sample.visual().map(ReadingWords::text));
        lines.perhaps("show.control", sample.control().map(ReadingWords::text));
        lines.fact("show.route", ReadingWords.text(reading.route()));
        lines.perhaps("show.area", sample.area().map(area -> Decimals.of(area) + " cm²"));
        lines.fact("show.dilution", "×" + Decimals.of(sample.dilution()));
        lines.fact(
                "column.method", stands.method().ref() + ", " + stands.method().title());
        lines.fact("show.kit", stands.method().kit());
        lines.fact("show.target", stands.method().target().name());
        lines.fact("column.lot", reading.lot().value());
        lines.fact("column.operator", reading.operator().value());
        lines.perhaps("show.observer", reading.observer().map(Object::toString));
        reading.preChecks().forEach((name, value) -> lines.add(name + ": " + Decimals.of(value)));
        if (reading.origin() instanceof Origin.Sheet sheet) {
            lines.fact("show.origin", LedgerWords.get("show.sheet", sheet.file(), sheet.line()));
        }
    }

    private void strip(RecordedReading stands) {
        Reading reading = stands.reading();
        reading.strip()
                .format()
                .lines()
                .forEach(role -> lines.add(LedgerWords.get(
                        "show.line",
                        stands.method().marks().getOrDefault(role, ""),
                        ReadingWords.text(role),
                        ReadingWords.text(reading.strip().lines().get(role)))));
        reading.second()
                .ifPresent(second -> second.strip()
                        .lines()
                        .forEach((role, seen) -> lines.add(LedgerWords.get(
                                "show.second", second.reader(), ReadingWords.text(role), ReadingWords.text(seen)))));
    }

    private void times(Times times) {
        time("show.out-of-fridge", times.outOfFridge());
        time("show.extracted", times.extracted());
        lines.fact("show.shaken", times.shaken().map(SiteClock::span).orElseGet(ReadingText::notStated));
        time("show.started", times.started());
        time("show.read", times.read());
        times.started()
                .ifPresent(started -> times.read()
                        .ifPresent(
                                read -> lines.fact("show.elapsed", SiteClock.span(Duration.between(started, read)))));
    }

    private void time(String key, Optional<Instant> time) {
        lines.fact(key, time.map(clock::second).orElseGet(ReadingText::notStated));
    }

    private static String notStated() {
        return LedgerWords.get("show.not-stated");
    }
}
