package wickbench.widgets;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.json.Json;

/** What a desk remembers of its layout: widths, orders, sashes; kept on each change. */
@ProviderType
public interface Memory {

    /** Returns what was kept under this key; empty when nothing was, or it could not be read. */
    Optional<Json.Obj> recall(String key);

    void keep(String key, Json.Obj value);

    /** Forgets what was kept under this key. */
    void forget(String key);
}
