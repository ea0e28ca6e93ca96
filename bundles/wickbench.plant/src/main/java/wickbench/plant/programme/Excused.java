package wickbench.plant.programme;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * Quality answers for something that was not tested; the body of {@code due.excused}. It stays missed, and is on no list any more.
 *
 * @param occasion when it had become due
 */
public record Excused(String rule, Instant occasion, String reason) {
    public static final String KIND = "due.excused";

    public Json.Obj body() {
        return Json.object()
                .with("rule", rule)
                .with("occasion", occasion.toString())
                .with("reason", reason);
    }

    /** Reads a body. */
    public static Checked<Excused> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String rule = fields.text("rule");
        Optional<Instant> occasion = taking.instant("occasion");
        String reason = fields.text("reason");
        return fields.finish(() -> new Excused(rule, occasion.orElseThrow(), reason));
    }
}
