package wickbench.journal;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/**
 * The body of {@code station.pinned}: by which key another station is known from now on.
 *
 * @param fingerprint SHA-256 of the public key, in hexadecimal digits
 */
record Pin(StationId station, String publicKey, String fingerprint) {
    static final String KIND = "station.pinned";
    static final int V = 1;

    static Pin of(Founded founded) {
        return new Pin(
                founded.founding().station(),
                founded.key().base64(),
                founded.key().fingerprint().hex());
    }

    Json.Obj body() {
        return Json.object()
                .with("station", station.value())
                .with("public_key", publicKey)
                .with("key_fingerprint", fingerprint);
    }

    /** Reads an entry; empty when it pins nothing. */
    static Optional<Pin> of(Entry entry) {
        if (!entry.is(KIND, V)) {
            return Optional.empty();
        }
        Fields fields = Fields.of(entry.ref().toString(), entry.body());
        Optional<StationId> station = fields.optional("station", StationId::new);
        String key = fields.text("public_key");
        String fingerprint = fields.text("key_fingerprint");
        return fields.finish(() -> new Pin(station.orElseThrow(), key, fingerprint)) instanceof Checked.Good<Pin> good
                ? Optional.of(good.value())
                : Optional.empty();
    }
}
