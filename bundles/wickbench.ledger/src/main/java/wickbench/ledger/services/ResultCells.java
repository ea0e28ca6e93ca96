package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import wickbench.api.authority.ActWords;
import wickbench.api.person.PersonId;
import wickbench.ledger.ResultRow;
import wickbench.reading.OutcomeWords;

/** A result as the cells of a table. */
record ResultCells(SiteClock clock, Function<PersonId, String> names) {
    private static final List<String> COLUMNS = List.of(
            "when", "sample", "place", "line", "batch", "method", "lot", "operator", "outcome", "findings", "entry");

    static List<String> header() {
        return COLUMNS.stream().map(ResultCells::title).toList();
    }

    /** Returns the titles of {@link #signed}. */
    static List<String> headerWithSignature() {
        return Stream.concat(header().stream(), Stream.of(title("signature"))).toList();
    }

    List<String> of(ResultRow row) {
        return List.of(
                clock.minute(row.happened()),
                row.sample(),
                row.place(),
                row.line().orElse(""),
                row.batch().orElse(""),
                row.method().toString(),
                row.lot().value(),
                row.operator().value(),
                outcome(row),
                String.valueOf(row.findings()),
                row.ref().toString());
    }

    /** Returns the same with who signed the correction by which it stands. */
    List<String> signed(ResultRow row) {
        List<String> cells = new ArrayList<>(of(row));
        String none = row.corrected() ? LedgerWords.get("show.unsigned") : "";
        cells.add(row.signed()
                .map(name -> LedgerWords.get(
                        "show.signed", names.apply(name.by()), clock.second(name.at()), ActWords.text(name.meaning())))
                .orElse(none));
        return cells;
    }

    private static String outcome(ResultRow row) {
        String marks = (row.sign() ? LedgerWords.get("mark.sign") : "")
                + (row.inDoubt() ? LedgerWords.get("mark.in-doubt") : "")
                + (row.corrections() > 0 ? LedgerWords.get("mark.corrected") : "")
                + (row.corrected() && row.signed().isEmpty() ? LedgerWords.get("mark.unsigned") : "");
        return OutcomeWords.text(row.outcome(), row.dilution()) + marks;
    }

    private static String title(String column) {
        return LedgerWords.get("column." + column);
    }
}
