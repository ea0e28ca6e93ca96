package wickbench.ledger.services;

import java.util.function.Function;
import wickbench.api.authority.ActWords;
import wickbench.api.authority.Signature;
import wickbench.api.journal.Entry;
import wickbench.api.person.PersonId;
import wickbench.ledger.Signed;

/** Who wrote an entry, when, and whose name stands under it, as printed (21 CFR 11.50). */
record SignedBy(SiteClock clock, Function<PersonId, String> names) {
    String under(Entry entry) {
        String wrote = LedgerWords.get("report.wrote", names.apply(entry.by()), clock.second(entry.at()));
        String none = Signature.asked(entry.kind()) ? "\n" + LedgerWords.get("show.unsigned") : "";
        return wrote
                + Signed.under(entry)
                        .map(name -> "\n"
                                + LedgerWords.get(
                                        "show.signed",
                                        names.apply(name.by()),
                                        clock.second(name.at()),
                                        ActWords.text(name.meaning())))
                        .orElse(none);
    }
}
