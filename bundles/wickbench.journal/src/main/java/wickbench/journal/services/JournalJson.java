package wickbench.journal.services;

import java.util.Optional;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Hash;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Verification;
import wickbench.api.json.Json;

/** What the journal says, for machines. */
final class JournalJson {
    private JournalJson() {}

    static Json status(JournalStatus status) {
        return Json.object()
                .with("folder", status.folder().toString())
                .with("founding", status.founding().map(JournalJson::founding).orElse(Json.Null.NULL))
                .with("size", status.size())
                .with("root", status.root().hex())
                .withText("key_fingerprint", status.keyFingerprint().map(Hash::hex))
                .with("checkpoint", checkpoint(status.checkpoint()))
                .with("notices", Json.texts(status.notices()))
                .withText("read_only", status.readOnly());
    }

    private static Json founding(Founding founding) {
        Json.Obj json = Json.object()
                .with("station", founding.station().value())
                .with("zone", founding.zone().getId())
                .with("simulated", founding.simulated());
        return founding.simulated()
                ? json.with("seed", Long.toString(founding.simulatedSeed().getAsLong()))
                : json;
    }

    static Json checkpoint(Optional<Checkpoint> checkpoint) {
        return checkpoint.<Json>map(Checkpoint::json).orElse(Json.Null.NULL);
    }

    static Json comparison(Comparison comparison) {
        return Json.object()
                .with("result", comparison.result().code())
                .with("holds", comparison.holds())
                .with("signed", comparison.signed())
                .with("text", comparison.text());
    }

    static Json verification(Verification verification) {
        return Json.object()
                .with("holds", verification.holds())
                .with("complete", verification.complete())
                .with("entries", verification.entries())
                .with("checkpoints", verification.checkpoints())
                .with("root", verification.root().hex())
                .with(
                        "findings",
                        Json.array(verification.findings().stream()
                                .map(JournalJson::broken)
                                .toList()));
    }

    private static Json broken(Verification.Broken broken) {
        return Json.object()
                .with("where", broken.where())
                .with("code", broken.code())
                .with("text", broken.text());
    }
}
