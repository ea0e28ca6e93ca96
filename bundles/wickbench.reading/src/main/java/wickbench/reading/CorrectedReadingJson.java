package wickbench.reading;

import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;

/** The body of {@code reading.corrected}; the schema is {@code docs/formats/reading.corrected-1.schema.json}. */
public final class CorrectedReadingJson {
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    private CorrectedReadingJson() {}

    /** Reads the body of an entry. */
    public static Checked<CorrectedReading> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<UUID> corrects = Parts.needParsed(fields, "corrects", "the id of an entry", CorrectedReadingJson::id);
        String reason = fields.text("reason");
        // whoever wants to know asks for the signature of the entry
        fields.has("signature");
        Optional<RecordedReading> now = RecordedReadingJson.read(fields.child("now"));
        return fields.finish(() -> new CorrectedReading(corrects.orElseThrow(), reason, now.orElseThrow()));
    }

    /** Writes the body of an entry. */
    public static Json.Obj write(CorrectedReading corrected) {
        return Json.object()
                .with("corrects", corrected.corrects().toString())
                .with("reason", corrected.reason())
                .with("now", RecordedReadingJson.write(corrected.now()));
    }

    private static UUID id(String text) {
        // the JDK takes shorter forms too, which would make two texts of one id
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("expected an id such as " + new UUID(0, 1) + ", found '" + text + "'");
        }
        return UUID.fromString(text);
    }
}
