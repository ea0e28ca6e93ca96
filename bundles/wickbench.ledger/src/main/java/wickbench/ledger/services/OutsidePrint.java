package wickbench.ledger.services;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Outside;
import wickbench.reading.ReadingWords;

/** Shows reports of outside laboratories, each with the strips because of which it was asked. */
record OutsidePrint(Terminal terminal, Results results, SiteFacts site) {
    void list(List<Entry> reports) {
        if (terminal.json()) {
            terminal.json(Json.array(reports.stream()
                    .map(entry -> Outside.of(entry)
                            .orElseThrow()
                            .body()
                            .with("entry", entry.ref().toString())
                            .with("by", entry.by().value()))
                    .toList()));
        } else if (reports.isEmpty()) {
            terminal.line(LedgerWords.get("outside.none"));
        } else {
            terminal.table(
                    Stream.of(
                                    "reported",
                                    "laboratory",
                                    "reference",
                                    "sample",
                                    "target",
                                    "says",
                                    "batch",
                                    "because",
                                    "entry")
                            .map(column -> LedgerWords.get("outside.column." + column))
                            .toList(),
                    reports.stream().map(this::row).toList());
        }
    }

    private List<String> row(Entry entry) {
        Outside report = Outside.of(entry).orElseThrow();
        return List.of(
                new SiteClock(site.now().zone()).minute(report.reported()),
                report.laboratory(),
                report.reference(),
                report.sample(),
                report.target(),
                found(report),
                report.batch().orElse(""),
                report.results().stream()
                        .flatMap(id -> results.find(id).stream())
                        .map(detail -> held(detail.row()))
                        .collect(Collectors.joining(", ")),
                entry.ref().toString());
    }

    private static String held(ResultRow row) {
        return row.held() ? LedgerWords.get("outside.held", row.sample()) : row.sample();
    }

    /** Returns what was found, and how much. */
    static String found(Outside report) {
        return LedgerWords.get(report.detected() ? "outside.detected" : "outside.not-detected")
                + report.amount()
                        .map(each -> LedgerWords.get(
                                report.detected() ? "outside.of" : "outside.below",
                                each,
                                ReadingWords.text(report.basis().orElseThrow())))
                        .orElse("");
    }
}
