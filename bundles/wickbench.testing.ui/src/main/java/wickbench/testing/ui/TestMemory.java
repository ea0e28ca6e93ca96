package wickbench.testing.ui;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.widgets.Memory;

/** A memory that lasts as long as the test. */
final class TestMemory implements Memory {
    private final Map<String, Json.Obj> kept = new HashMap<>();

    @Override
    public Optional<Json.Obj> recall(String key) {
        return Optional.ofNullable(kept.get(key));
    }

    @Override
    public void keep(String key, Json.Obj value) {
        kept.put(key, value);
    }

    @Override
    public void forget(String key) {
        kept.remove(key);
    }
}
