package wickbench.plant.site;

import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.plant.entry.Taking;

/** A place to be sampled by a method. */
public record Sampling(String place, MethodId method) {
    public Json.Obj json() {
        return Json.object().with("place", place).with("method", method.value());
    }

    /** Reads one; empty after a complaint. */
    public static Optional<Sampling> read(Fields fields) {
        String place = fields.text("place");
        return Taking.part(fields).needed("method", MethodId::new).map(method -> new Sampling(place, method));
    }
}
