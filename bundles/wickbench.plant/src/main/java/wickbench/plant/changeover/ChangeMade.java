package wickbench.plant.changeover;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * A line was changed from one product to another; the body of {@code changeover.made}.
 *
 * @param at when the first product had ended
 */
public record ChangeMade(String line, String from, String to, Instant at) {
    public static final String KIND = "changeover.made";

    public Json.Obj body() {
        return Json.object()
                .with("line", line)
                .with("from", from)
                .with("to", to)
                .with("at", at.toString());
    }

    /** Reads a body. */
    public static Checked<ChangeMade> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String line = fields.text("line");
        String from = fields.text("from");
        String to = fields.text("to");
        Optional<Instant> at = taking.instant("at");
        return fields.finish(() -> new ChangeMade(line, from, to, at.orElseThrow()));
    }
}
