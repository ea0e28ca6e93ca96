package wickbench.ledger.services;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.journal.Entry;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.Origin;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Verdict;
import wickbench.api.words.Coded;

/** The columns that a statement fills; texts that are not stated are empty, so that they can be sorted by. */
final class Facts {
    static final List<String> COLUMNS = List.of(
            "happened timestamp(3) with time zone not null",
            "started timestamp(3) with time zone",
            "read_at timestamp(3) with time zone",
            "sample varchar not null",
            "place varchar not null",
            "line varchar not null",
            "batch varchar not null",
            "why varchar not null",
            "route varchar not null",
            "method varchar not null",
            "method_version integer not null",
            "target varchar not null",
            "lot varchar not null",
            "operator varchar not null",
            "outcome varchar not null",
            "sign boolean not null",
            "holds boolean not null",
            "findings integer not null",
            "worst varchar not null",
            "control varchar not null",
            "dilution decimal(30, 15) not null",
            "sheet varchar not null",
            "words varchar not null");

    private Facts() {}

    /** Returns a value for each column, by its name. */
    static Map<String, Object> of(RecordedReading recorded, Entry entry) {
        Map<String, Object> values = new LinkedHashMap<>();
        Reading reading = recorded.reading();
        times(values, reading, entry);
        sample(values, reading.sample());
        values.put("route", reading.route().code());
        values.put("method", recorded.method().ref().id().value());
        values.put("method_version", recorded.method().ref().version());
        values.put("target", recorded.method().target().name());
        values.put("lot", reading.lot().value());
        values.put("operator", reading.operator().value());
        verdict(values, recorded.verdict());
        values.put("sheet", reading.origin() instanceof Origin.Sheet sheet ? sheet.file() : "");
        values.put("words", words(recorded));
        return values;
    }

    private static void times(Map<String, Object> values, Reading reading, Entry entry) {
        Optional<Instant> started = reading.times().started();
        Optional<Instant> read = reading.times().read();
        values.put("happened", started.or(() -> read).orElse(entry.at()));
        values.put("started", started);
        values.put("read_at", read);
    }

    private static void sample(Map<String, Object> values, Sample sample) {
        values.put("sample", sample.code());
        values.put("place", sample.place());
        values.put("line", sample.line().orElse(""));
        values.put("batch", sample.batch().orElse(""));
        values.put("why", code(sample.reason()));
        values.put("control", code(sample.control()));
        values.put("dilution", sample.dilution());
    }

    private static void verdict(Map<String, Object> values, Verdict verdict) {
        values.put("outcome", verdict.outcome().code());
        values.put("sign", verdict.sign());
        values.put("holds", verdict.holds());
        values.put("findings", verdict.findings().size());
        values.put("worst", code(worst(verdict)));
    }

    private static Optional<Severity> worst(Verdict verdict) {
        return verdict.findings().stream().map(Finding::severity).min(Comparator.naturalOrder());
    }

    private static String words(RecordedReading recorded) {
        Reading reading = recorded.reading();
        Sample sample = reading.sample();
        Stream<String> stated = Stream.of(
                sample.code(),
                sample.place(),
                recorded.method().ref().id().value(),
                recorded.method().target().name(),
                reading.lot().value(),
                reading.operator().value());
        Stream<String> perhaps =
                Stream.of(sample.line(), sample.batch(), sample.reasonText()).flatMap(Optional::stream);
        // a line end between them, so that no search finds what spans two
        return Stream.concat(stated, perhaps).collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
    }

    private static String code(Optional<? extends Coded> choice) {
        return choice.map(Coded::code).orElse("");
    }
}
