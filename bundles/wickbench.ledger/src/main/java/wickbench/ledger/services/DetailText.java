package wickbench.ledger.services;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.gate.Answer;
import wickbench.api.journal.Checkpoint;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Verdict;
import wickbench.ledger.InDoubt;
import wickbench.ledger.ResultDetail;
import wickbench.reading.FindingWords;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;

/** One result in full, line by line. */
final class DetailText {
    private final Site site;
    private final SiteClock clock;
    private final Function<PersonId, String> names;
    private final Optional<Checkpoint> checkpoint;
    private final Lines lines = new Lines();

    DetailText(Site site, Optional<Checkpoint> checkpoint, Function<PersonId, String> names) {
        this.site = site;
        this.names = names;
        clock = new SiteClock(site.zone());
        this.checkpoint = checkpoint;
    }

    List<String> lines(ResultDetail detail) {
        RecordedReading stands = detail.reading();
        verdict(detail, stands.verdict());
        new ReadingText(lines, clock).add(stands);
        findings(stands.verdict());
        owed(stands.verdict());
        doubts(detail.doubts());
        lines.head("show.facts");
        if (stands.answers().isEmpty()) {
            lines.add(LedgerWords.get("show.nobody-asked"));
        }
        stands.answers().forEach(this::answer);
        lines.head("show.history");
        detail.history().forEach(new HistoryText(lines, clock, checkpoint, names)::add);
        return lines.all();
    }

    private void verdict(ResultDetail detail, Verdict verdict) {
        BigDecimal dilution = detail.reading().reading().sample().dilution();
        lines.fact(
                "show.outcome",
                OutcomeWords.text(verdict.outcome(), dilution) + " – " + OutcomeWords.sentence(verdict, dilution));
        verdict.level().ifPresent(level -> lines.fact("show.level", OutcomeWords.level(site.shown(level))));
        verdict.level()
                .flatMap(OutcomeWords::probability)
                .ifPresent(probability -> lines.fact("show.probability", probability));
        if (!detail.asRecorded()) {
            lines.add(LedgerWords.get("show.differs"));
        }
        if (detail.held()) {
            lines.add(LedgerWords.get("show.held"));
        }
        if (detail.row().inDoubt()) {
            lines.add(LedgerWords.get("show.in-doubt"));
        }
        detail.row()
                .reviewed()
                .ifPresentOrElse(
                        review -> lines.fact(
                                "show.reviewed",
                                LedgerWords.get(
                                        "show.reviewed-by", names.apply(review.by()), clock.second(review.at()))),
                        () -> lines.fact(
                                "show.review-by",
                                site.reviewBy(detail.row().waits()).toString()));
        lines.fact("show.id", detail.row().id().toString());
    }

    private void findings(Verdict verdict) {
        lines.head("show.findings");
        if (verdict.findings().isEmpty()) {
            lines.add(LedgerWords.get("show.no-findings"));
        }
        verdict.findings()
                .forEach(finding -> lines.add(ReadingWords.text(finding.severity()) + ": " + FindingWords.text(finding)
                        + " [" + finding.rule() + "]"));
    }

    private void owed(Verdict verdict) {
        if (!verdict.owed().isEmpty()) {
            lines.head("show.owed");
            verdict.owed().stream()
                    .sorted(Comparator.naturalOrder())
                    .forEach(owed -> lines.add(ReadingWords.text(owed)));
        }
    }

    private void doubts(List<InDoubt> doubts) {
        if (!doubts.isEmpty()) {
            lines.head("show.doubts");
        }
        for (InDoubt doubt : doubts) {
            lines.add(LedgerWords.get(
                    "show.doubt", doubt.entry(), clock.second(doubt.at()), ReadingWords.doubt(doubt.cause())));
            lines.below(
                    doubt.open()
                            ? LedgerWords.get("show.undecided")
                            : LedgerWords.get(
                                    "show.decided",
                                    doubt.decisions().stream()
                                            .map(Object::toString)
                                            .collect(Collectors.joining(", "))));
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
        lines.add(answer.neighbour() + ": " + said);
    }

    private static String facts(Map<String, String> facts) {
        return new TreeMap<>(facts)
                .entrySet().stream()
                        .map(fact -> fact.getKey() + " " + fact.getValue())
                        .collect(Collectors.joining(", "));
    }
}
