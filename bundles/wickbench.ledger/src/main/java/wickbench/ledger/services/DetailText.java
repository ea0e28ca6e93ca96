package wickbench.ledger.services;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wickbench.api.gate.Answer;
import wickbench.api.journal.Checkpoint;
import wickbench.api.profile.Site;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.Origin;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.api.reading.Verdict;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.Statement;
import wickbench.reading.FindingWords;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;

/** One result in full, line by line. */
final class DetailText {
    private final Site site;
    private final SiteClock clock;
    private final Optional<Checkpoint> checkpoint;
    private final List<String> lines = new ArrayList<>();

    DetailText(Site site, Optional<Checkpoint> checkpoint) {
        this.site = site;
        clock = new SiteClock(site.zone());
        this.checkpoint = checkpoint;
    }

    List<String> lines(ResultDetail detail) {
        RecordedReading stands = detail.reading();
        verdict(detail, stands.verdict());
        head("show.sample");
        sample(stands);
        head("show.strip");
        strip(stands);
        head("show.times");
        times(stands.reading().times());
        findings(stands.verdict());
        owed(stands.verdict());
        head("show.facts");
        if (stands.answers().isEmpty()) {
            lines.add("  " + LedgerWords.get("show.nobody-asked"));
        }
        stands.answers().forEach(this::answer);
        head("show.history");
        detail.history().forEach(this::statement);
        return lines;
    }

    private void verdict(ResultDetail detail, Verdict verdict) {
        fact(
                "show.outcome",
                OutcomeWords.text(verdict.outcome(), detail.row().dilution()) + " – "
                        + OutcomeWords.sentence(verdict, detail.row().dilution()));
        verdict.level().ifPresent(level -> fact("show.level", OutcomeWords.level(site.shown(level))));
        verdict.level()
                .flatMap(OutcomeWords::probability)
                .ifPresent(probability -> fact("show.probability", probability));
        if (detail.row().held()) {
            lines.add("  " + LedgerWords.get("show.held"));
        }
        site.reviewBy(detail.row().recorded()).ifPresent(day -> fact("show.review-by", day.toString()));
        fact("show.id", detail.row().id().toString());
    }

    private void sample(RecordedReading stands) {
        Reading reading = stands.reading();
        Sample sample = reading.sample();
        fact("column.sample", sample.code());
        fact("column.place", sample.place());
        perhaps("column.line", sample.line());
        perhaps("column.batch", sample.batch());
        perhaps("show.reason", sample.reason().map(ReadingWords::text));
        perhaps("show.reason-text", sample.reasonText());
        perhaps("show.visual", sample.visual().map(ReadingWords::text));
        perhaps("show.control", sample.control().map(ReadingWords::text));
        fact("show.route", ReadingWords.text(reading.route()));
        perhaps("show.area", sample.area().map(area -> area.toPlainString() + " cm²"));
        fact("show.dilution", "×" + sample.dilution().toPlainString());
        fact("column.method", stands.method().ref() + ", " + stands.method().title());
        fact("show.kit", stands.method().kit());
        fact("show.target", stands.method().target().name());
        fact("column.lot", reading.lot().value());
        fact("column.operator", reading.operator().value());
        perhaps("show.observer", reading.observer().map(Object::toString));
        reading.preChecks().forEach((name, value) -> lines.add("  " + name + ": " + value.toPlainString()));
        if (reading.origin() instanceof Origin.Sheet sheet) {
            fact("show.origin", LedgerWords.get("show.sheet", sheet.file(), sheet.line()));
        }
    }

    private void strip(RecordedReading stands) {
        Reading reading = stands.reading();
        reading.strip()
                .format()
                .lines()
                .forEach(role -> lines.add("  "
                        + LedgerWords.get(
                                "show.line",
                                stands.method().marks().getOrDefault(role, ""),
                                ReadingWords.text(role),
                                ReadingWords.text(reading.strip().lines().get(role)))));
        reading.second()
                .ifPresent(second -> second.strip()
                        .lines()
                        .forEach((role, seen) -> lines.add("  "
                                + LedgerWords.get(
                                        "show.second",
                                        second.reader(),
                                        ReadingWords.text(role),
                                        ReadingWords.text(seen)))));
    }

    private void times(Times times) {
        time("show.out-of-fridge", times.outOfFridge());
        time("show.extracted", times.extracted());
        fact("show.shaken", times.shaken().map(SiteClock::span).orElseGet(DetailText::notStated));
        time("show.started", times.started());
        time("show.read", times.read());
        times.started()
                .ifPresent(started -> times.read()
                        .ifPresent(read -> fact("show.elapsed", SiteClock.span(Duration.between(started, read)))));
    }

    private void findings(Verdict verdict) {
        head("show.findings");
        if (verdict.findings().isEmpty()) {
            lines.add("  " + LedgerWords.get("show.no-findings"));
        }
        verdict.findings()
                .forEach(finding -> lines.add("  " + ReadingWords.text(finding.severity()) + ": "
                        + FindingWords.text(finding) + " [" + finding.rule() + "]"));
    }

    private void owed(Verdict verdict) {
        if (!verdict.owed().isEmpty()) {
            head("show.owed");
            verdict.owed().stream()
                    .sorted(Comparator.naturalOrder())
                    .forEach(owed -> lines.add("  " + ReadingWords.text(owed)));
        }
    }

    private void answer(Answer answer) {
        String said;
        if (answer instanceof Answer.Cleared cleared) {
            said = LedgerWords.get("show.cleared", facts(cleared.facts()));
        } else if (answer instanceof Answer.Refused refused) {
            said = LedgerWords.get("show.refused", facts(refused.facts()));
        } else {
            said = LedgerWords.get("show.not-checked");
        }
        lines.add("  " + answer.neighbour() + ": " + said);
    }

    private void statement(Statement statement) {
        lines.add("  "
                + LedgerWords.get(
                        statement.reason().isPresent() ? "show.corrected" : "show.recorded",
                        statement.entry().ref(),
                        clock.second(statement.entry().at()),
                        statement.entry().by(),
                        OutcomeWords.text(
                                statement.reading().verdict().outcome(),
                                statement.reading().reading().sample().dilution()),
                        statement.reason().orElse(""))
                + (statement.counts() ? LedgerWords.get("show.counts") : ""));
        lines.add("    " + LedgerWords.get("show.leaf", statement.entry().leaf()));
        lines.add("    " + seal(statement));
    }

    private String seal(Statement statement) {
        return checkpoint
                .filter(kept -> kept.station().equals(statement.entry().ref().station()))
                .filter(kept -> kept.size() > statement.entry().ref().seq())
                .map(kept -> LedgerWords.get("show.sealed", kept.size(), kept.root()))
                .orElseGet(() -> LedgerWords.get("show.unsealed"));
    }

    private void head(String key) {
        lines.add("");
        lines.add(LedgerWords.get(key));
    }

    private void fact(String key, String value) {
        lines.add("  " + LedgerWords.get(key) + ": " + value);
    }

    private void perhaps(String key, Optional<String> value) {
        value.ifPresent(some -> fact(key, some));
    }

    private void time(String key, Optional<Instant> time) {
        fact(key, time.map(clock::second).orElseGet(DetailText::notStated));
    }

    private static String notStated() {
        return LedgerWords.get("show.not-stated");
    }

    private static String facts(Map<String, String> facts) {
        return new TreeMap<>(facts)
                .entrySet().stream()
                        .map(fact -> fact.getKey() + " " + fact.getValue())
                        .collect(Collectors.joining(", "));
    }
}
