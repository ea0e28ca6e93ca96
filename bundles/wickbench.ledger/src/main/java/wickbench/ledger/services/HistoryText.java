package wickbench.ledger.services;

import java.util.Optional;
import java.util.function.Function;
import wickbench.api.authority.ActWords;
import wickbench.api.authority.Signature;
import wickbench.api.journal.Checkpoint;
import wickbench.api.person.PersonId;
import wickbench.ledger.Signed;
import wickbench.ledger.Statement;
import wickbench.reading.OutcomeWords;

/** What was said of a result and by whom, who signed it, and how it is sealed. */
record HistoryText(Lines lines, SiteClock clock, Optional<Checkpoint> checkpoint, Function<PersonId, String> names) {
    void add(Statement statement) {
        lines.add(LedgerWords.get(
                        statement.reason().isPresent() ? "show.corrected" : "show.recorded",
                        statement.entry().ref(),
                        clock.second(statement.entry().at()),
                        statement.entry().by(),
                        OutcomeWords.text(
                                statement.reading().verdict().outcome(),
                                statement.reading().reading().sample().dilution()),
                        statement.reason().orElse(""))
                + (statement.counts() ? LedgerWords.get("show.counts") : ""));
        if (Signature.asked(statement.entry().kind())) {
            lines.below(signature(statement));
        }
        lines.below(LedgerWords.get("show.leaf", statement.entry().leaf()));
        lines.below(seal(statement));
    }

    private String signature(Statement statement) {
        return Signed.under(statement.entry())
                .map(name -> LedgerWords.get(
                        "show.signed", names.apply(name.by()), clock.second(name.at()), ActWords.text(name.meaning())))
                .orElseGet(() -> LedgerWords.get("show.unsigned"));
    }

    private String seal(Statement statement) {
        return checkpoint
                .filter(kept -> kept.station().equals(statement.entry().ref().station()))
                .filter(kept -> kept.size() > statement.entry().ref().seq())
                .map(kept -> LedgerWords.get("show.sealed", kept.size(), kept.root()))
                .orElseGet(() -> LedgerWords.get("show.unsealed"));
    }
}
