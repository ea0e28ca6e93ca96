package wickbench.parts.running;

import java.util.List;
import org.osgi.framework.Bundle;

/** A set that runs. */
public record RunningSet(SetSource source, List<Bundle> bundles) {
    public RunningSet {
        bundles = List.copyOf(bundles);
    }
}
