package wickbench.journal;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalLong;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.proof.Digest;
import wickbench.proof.OpenKey;

/** The body of a station's first entry: how it began and by which key it signs. */
record Founded(Founding founding, OpenKey key) {
    static final String KIND = "station.founded";
    static final int V = 1;

    /** The form of the files, raised only when an older program could no longer read them. */
    private static final long FORMAT = 1;

    private static final String SYSTEM = "system";
    private static final String SIMULATED = "simulated";

    Json.Obj body() {
        Json.Obj body = Json.object()
                .with("station", founding.station().value())
                .with("zone", founding.zone().getId())
                .with("public_key", key.base64())
                .with("key_fingerprint", key.fingerprint().hex())
                .with("clock", founding.simulated() ? SIMULATED : SYSTEM)
                .with("format", FORMAT);
        // as a text, for a seed may have more digits than a JSON number keeps
        return founding.simulated()
                ? body.with("seed", Long.toString(founding.simulatedSeed().getAsLong()))
                : body;
    }

    /** Reads the first entry of a station. */
    static Checked<Founded> read(Entry entry) {
        Fields fields = Fields.of(entry.ref().toString(), entry.body());
        if (!entry.is(KIND, V) || entry.ref().seq() != 0) {
            fields.complain("kind", "expected " + KIND + " v" + V + " first, found " + entry.kind() + " v" + entry.v());
        }
        Optional<StationId> station =
                fields.optional("station", StationId::new).filter(entry.ref().station()::equals);
        Optional<ZoneId> zone = fields.optional("zone", Founded::zone);
        Optional<OpenKey> key = key(fields);
        Optional<Long> seed = seed(fields);
        if (fields.whole("format") != FORMAT) {
            fields.complain("format", "expected " + FORMAT);
        }
        if (station.isEmpty() || zone.isEmpty() || key.isEmpty()) {
            fields.complain("station", "station, zone or key is missing or contradicts the envelope");
        }
        return fields.finish(() -> new Founded(
                new Founding(
                        station.orElseThrow(),
                        zone.orElseThrow(),
                        seed.map(OptionalLong::of).orElse(OptionalLong.empty())),
                key.orElseThrow()));
    }

    private static Optional<OpenKey> key(Fields fields) {
        Optional<Digest> fingerprint = fields.optional("key_fingerprint", Digest::new);
        return fields.optionalText("public_key")
                .flatMap(OpenKey::parse)
                .filter(key -> fingerprint.filter(key.fingerprint()::equals).isPresent());
    }

    private static Optional<Long> seed(Fields fields) {
        Optional<Long> seed = fields.optional("seed", Long::valueOf);
        String clock = fields.text("clock");
        if (!clock.equals(seed.isPresent() ? SIMULATED : SYSTEM)) {
            fields.complain("clock", "expected " + SYSTEM + ", or " + SIMULATED + " with its seed, found " + clock);
        }
        return seed;
    }

    private static ZoneId zone(String id) {
        try {
            return ZoneId.of(id);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("expected a time zone, found " + id, e);
        }
    }
}
