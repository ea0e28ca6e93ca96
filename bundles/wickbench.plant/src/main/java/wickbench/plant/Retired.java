package wickbench.plant;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/** Something is there no more; the body of {@code plant.retired}. Stated again, it is back. */
public record Retired(Thing what, String id, String reason) {
    public static final String KIND = "plant.retired";

    public Json.Obj body() {
        return Json.object().with("what", what.code()).with("id", id).with("reason", reason);
    }

    /** Reads a body. */
    public static Checked<Retired> read(Fields fields) {
        Taking taking = Taking.body(fields);
        Optional<Thing> what = taking.choice("what", Thing.class);
        String id = fields.text("id");
        String reason = fields.text("reason");
        return fields.finish(() -> new Retired(what.orElseThrow(), id, reason));
    }
}
