package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Section;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Statement;

/** Every correction with what was said before, what is said instead, why, and who signed for it. */
record CorrectionTable(Results results, SignedBy signed) {
    Section of(List<ResultRow> corrected, Consumer<EntryRef> drawnFrom) {
        if (corrected.isEmpty()) {
            return new Section.Paragraph(LedgerWords.get("report.no-corrections"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (ResultRow row : corrected) {
            List<Statement> history = results.find(row.id()).orElseThrow().history();
            for (int at = 1; at < history.size(); at++) {
                rows.add(row(row, history.get(at - 1), history.get(at)));
                drawnFrom.accept(history.get(at).entry().ref());
            }
        }
        return Section.Table.of(
                Stream.of("sample", "entry", "old", "now", "why", "who")
                        .map(column -> LedgerWords.get("report.column." + column))
                        .toList(),
                rows);
    }

    private List<String> row(ResultRow row, Statement before, Statement after) {
        Changes changes = Changes.between(before, after, signed.clock());
        return List.of(
                row.sample(),
                before.entry().ref() + " → " + after.entry().ref(),
                changes.old(),
                changes.now(),
                after.reason().orElse("") + (after.counts() ? "" : "\n" + LedgerWords.get("report.not-standing")),
                signed.under(after.entry()));
    }
}
