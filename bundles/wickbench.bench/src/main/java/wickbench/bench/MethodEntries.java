package wickbench.bench;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.doubt.Doubt;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.reading.MethodJson;

/** The entries that methods are kept in: {@code method.issued} and {@code method.withdrawn}. */
final class MethodEntries {
    static final String ISSUED = "method.issued";
    static final String WITHDRAWN = "method.withdrawn";
    static final int VERSION = 1;

    private MethodEntries() {}

    static Draft issued(Method method, PersonId by) {
        Json.Obj body = Json.object().with("method", MethodJson.write(method));
        return new Draft(Draft.contentId(ISSUED, body), by, ISSUED, VERSION, body);
    }

    /** @param from since when the version was in force; every Negative read by it since then waits for a decision */
    static Draft withdrawn(MethodId id, int version, Instant from, String reason, PersonId by) {
        Json.Obj body = Doubt.into(
                Json.object()
                        .with("method", id.value())
                        .with("version", version)
                        .with("reason", reason),
                List.of(Doubt.ofMethod(WITHDRAWN, id, Optional.of(from))));
        return new Draft(Draft.contentId(WITHDRAWN, body), by, WITHDRAWN, VERSION, body);
    }

    static Json.Obj issuedMethod(Entry entry) {
        return entry.body()
                .get("method")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .orElseThrow(() -> new IllegalStateException(entry.ref() + " issues no method"));
    }

    static String issuedId(Entry entry) {
        return Fields.of(entry.ref().toString(), issuedMethod(entry)).text("id");
    }

    static String withdrawnId(Entry entry) {
        return Fields.of(entry.ref().toString(), entry.body()).text("method");
    }
}
