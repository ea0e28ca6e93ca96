package wickbench.shell;

import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.widgets.Memory;

/** Remembers nothing, so that a picture looks the same on every desk. */
enum Forgetful implements Memory {
    FORGETFUL;

    @Override
    public Optional<Json.Obj> recall(String key) {
        return Optional.empty();
    }

    @Override
    public void keep(String key, Json.Obj value) {
        // a picture leaves no trace
    }

    @Override
    public void forget(String key) {
        // nothing was kept
    }
}
