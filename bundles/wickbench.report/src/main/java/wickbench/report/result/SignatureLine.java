package wickbench.report.result;

import java.util.Optional;
import wickbench.api.authority.ActWords;
import wickbench.api.authority.Signature;
import wickbench.api.authority.Signature.Standing;
import wickbench.api.journal.Entry;
import wickbench.report.ReportWords;
import wickbench.report.text.SiteClock;

/** The signature under an entry on paper: printed name, date and time, meaning (21 CFR 11.50). */
record SignatureLine(SiteClock clock, Names names) {

    /** Returns what stands under an entry; empty where nothing does and none is asked. */
    Optional<String> under(Entry entry) {
        Standing standing = Signature.under(entry);
        if (standing instanceof Standing.Signed signed) {
            Signature name = signed.signature();
            return Optional.of(ReportWords.get(
                    "signature.line", names.of(name.by()), clock.seconds(name.at()), ActWords.text(name.meaning())));
        }
        if (standing instanceof Standing.Foreign) {
            return Optional.of(ReportWords.get("signature.foreign"));
        }
        return Signature.asked(entry.kind()) ? Optional.of(ReportWords.get("signature.none")) : Optional.empty();
    }
}
