package wickbench.ledger.ui;

import wickbench.api.authority.ActWords;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Signed;

/** A signature as people read it: who, when, what for (21 CFR 11.50). */
final class SignatureWords {
    private SignatureWords() {}

    static String of(Signed name, WhoIsWho people, SiteTimes times) {
        return LedgerUiWords.get(
                "signature.line", people.full(name.by()), times.second(name.at()), ActWords.text(name.meaning()));
    }

    /** Returns what stands under the statement by which a result stands; nothing where none is asked. */
    static String under(ResultRow row, WhoIsWho people, SiteTimes times) {
        return row.signed()
                .map(name -> of(name, people, times))
                .orElseGet(() -> row.corrected() ? LedgerUiWords.get("signature.none") : "");
    }
}
