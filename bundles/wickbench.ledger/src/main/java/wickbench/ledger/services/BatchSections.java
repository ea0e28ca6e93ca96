package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.journal.Entry;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Tone;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Standing;
import wickbench.reading.OutcomeWords;

/** What a test report of a batch begins with: may it go, by which points, and how it was released. */
record BatchSections(SignedBy signed) {
    List<Section> of(Standing standing) {
        List<Section> sections = new ArrayList<>();
        sections.add(answer(standing));
        part(sections, "standing.points", points(standing));
        if (!standing.released().isEmpty()) {
            part(
                    sections,
                    "report.released",
                    Section.Table.of(
                            words("entry", "who"),
                            standing.released().stream().map(this::released).toList()));
        }
        if (!standing.outside().isEmpty()) {
            part(
                    sections,
                    "report.outside",
                    Section.Table.of(
                            words("laboratory", "result", "when"),
                            standing.outside().stream().map(this::outside).toList()));
        }
        return sections;
    }

    private static Section answer(Standing standing) {
        String why = standing.reasons().stream().map(No::text).collect(Collectors.joining("\n"));
        if (standing.mayGo()) {
            return standing.released().isEmpty()
                    ? new Section.Notice(Tone.NOTICE, LedgerWords.get("report.may-go"), LedgerWords.get("standing.go"))
                    : new Section.Notice(
                            Tone.NOTICE, LedgerWords.get("report.gone"), LedgerWords.get("report.gone.text"));
        }
        return standing.calledBack()
                ? new Section.Notice(
                        Tone.EXTREME,
                        LedgerWords.get("report.call-back"),
                        LedgerWords.get("standing.back") + "\n" + why)
                : new Section.Notice(
                        Tone.ALARM, LedgerWords.get("report.stays"), LedgerWords.get("standing.stay") + "\n" + why);
    }

    private static void part(List<Section> sections, String key, Section section) {
        sections.add(new Section.Heading(LedgerWords.get(key)));
        sections.add(section);
    }

    private Section points(Standing standing) {
        return Section.Table.of(
                words("point", "method", "stands", "result", "when"),
                standing.points().stream().map(this::point).toList());
    }

    private List<String> point(Standing.Tested tested) {
        Optional<ResultRow> row = tested.result();
        return List.of(
                tested.point().place(),
                tested.point().method().value(),
                LedgerWords.get(tested.good() ? "report.good" : "report.lacks"),
                row.map(found -> found.sample() + "\n" + OutcomeWords.text(found.outcome(), found.dilution())
                                + (found.inDoubt() ? LedgerWords.get("mark.in-doubt") : ""))
                        .orElseGet(() -> LedgerWords.get("standing.untested")),
                row.map(found -> signed.clock().minute(found.happened())).orElse(""));
    }

    private List<String> released(Entry entry) {
        return List.of(entry.ref().toString(), signed.under(entry));
    }

    private List<String> outside(Outside report) {
        return List.of(
                report.laboratory() + ", " + report.reference(),
                report.target() + ": "
                        + LedgerWords.get(report.detected() ? "outside.detected" : "outside.not-detected")
                        + report.amount().map(amount -> " " + amount).orElse(""),
                signed.clock().minute(report.reported()));
    }

    private static List<String> words(String... columns) {
        return Stream.of(columns)
                .map(column -> LedgerWords.get("report.column." + column))
                .toList();
    }
}
