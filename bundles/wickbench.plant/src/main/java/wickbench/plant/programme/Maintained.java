package wickbench.plant.programme;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/** A line was opened, mended or changed; the body of {@code maintenance.done}. */
public record Maintained(String line, String what, Instant at) {
    public static final String KIND = "maintenance.done";

    public Json.Obj body() {
        return Json.object().with("line", line).with("what", what).with("at", at.toString());
    }

    /** Reads a body. */
    public static Checked<Maintained> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String line = fields.text("line");
        String what = fields.text("what");
        Optional<Instant> at = taking.instant("at");
        return fields.finish(() -> new Maintained(line, what, at.orElseThrow()));
    }
}
