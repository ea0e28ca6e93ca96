package wickbench.plant.clean;

import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/** What a clean rests on has changed, so that it must be shown anew; the body of {@code validation.lapsed}. */
public record Changed(String clean, String reason) {
    public static final String KIND = "validation.lapsed";

    public Json.Obj body() {
        return Json.object().with("clean", clean).with("reason", reason);
    }

    /** Reads a body. */
    public static Checked<Changed> read(Fields fields) {
        Taking.body(fields);
        String clean = fields.text("clean");
        String reason = fields.text("reason");
        return fields.finish(() -> new Changed(clean, reason));
    }
}
