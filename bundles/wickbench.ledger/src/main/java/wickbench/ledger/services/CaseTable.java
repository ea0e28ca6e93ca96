package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Section;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Taken;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;

/** What holds or held, what became of it, why, and what is still owed; a row for each result, one for each decision below it. */
record CaseTable(SignedBy signed) {
    Section of(List<Case> cases, Consumer<EntryRef> drawnFrom) {
        if (cases.isEmpty()) {
            return new Section.Paragraph(LedgerWords.get("report.no-cases"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Case each : cases) {
            rows.add(head(each));
            for (Taken taken : each.taken()) {
                rows.add(taken(taken));
                drawnFrom.accept(taken.entry().ref());
            }
        }
        return Section.Table.of(
                Stream.of("result", "product", "decided", "why", "who")
                        .map(column -> LedgerWords.get("report.column." + column))
                        .toList(),
                rows);
    }

    private List<String> head(Case each) {
        ResultRow row = each.result();
        String what = row.sample() + ", " + row.place() + "\n" + OutcomeWords.text(row.outcome(), row.dilution()) + "\n"
                + signed.clock().minute(row.happened());
        String product = each.products().stream()
                .map(some -> LedgerWords.get(
                        "report.product",
                        some.name(),
                        LedgerWords.get("state." + some.state().code())))
                .collect(Collectors.joining("\n"));
        String owed = each.owed().stream()
                .filter(item -> !item.done())
                .map(item -> LedgerWords.get(
                        "report.owed", ReadingWords.text(item.step().owed())))
                .collect(Collectors.joining("\n"));
        String open = LedgerWords.get(each.open() ? "report.case-open" : "report.case-closed");
        String cause = each.cause()
                .map(known -> LedgerWords.get("case.cause", known))
                .orElseGet(() -> LedgerWords.get("report.no-cause"));
        String good = each.lastGood()
                .map(last -> LedgerWords.get("case.last-good", signed.clock().minute(last.at())))
                .orElseGet(() -> LedgerWords.get("case.no-last-good"));
        return List.of(what, product, owed.isEmpty() ? open : open + "\n" + owed, cause, good);
    }

    private List<String> taken(Taken taken) {
        String move = LedgerWords.get("move." + taken.decided().move().code());
        return List.of(
                "",
                String.join("\n", taken.decided().products()),
                taken.stands() ? move : LedgerWords.get("case.lost", move),
                taken.decided().reason(),
                signed.under(taken.entry()) + "\n" + taken.entry().ref());
    }
}
