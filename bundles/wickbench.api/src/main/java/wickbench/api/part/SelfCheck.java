package wickbench.api.part;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Looks whether the program itself is well: its bundles, its services, its disk, its clock, its key, its journal and its index. */
@ProviderType
@FunctionalInterface
public interface SelfCheck {

    /** Looks at everything once, in a fixed order; changes nothing. Must not be called on the UI thread. */
    List<Health> look();
}
