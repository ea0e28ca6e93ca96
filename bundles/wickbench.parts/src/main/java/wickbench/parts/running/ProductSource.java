package wickbench.parts.running;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.parts.plan.BundleId;
import wickbench.parts.plan.SetPlan;

/** A set out of the product folder, which is trusted as the program itself is; its jars lie there in Maven layout. */
record ProductSource(Path folder, SetPlan plan) implements SetSource {

    /** As the launcher says it, so that both mean the same bundle. */
    @Override
    public String location(BundleId bundle) {
        return "reference:" + jarFile(bundle).toUri();
    }

    @Override
    public Optional<InputStream> jar(BundleId bundle) {
        return Optional.empty();
    }

    @Override
    public Optional<String> maker() {
        return Optional.empty();
    }

    Path jarFile(BundleId bundle) {
        return folder.resolve("repo").resolve(bundle.path());
    }
}
