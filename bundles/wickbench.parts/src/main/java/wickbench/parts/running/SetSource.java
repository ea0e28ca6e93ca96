package wickbench.parts.running;

import java.io.InputStream;
import java.util.Optional;
import wickbench.parts.plan.BundleId;
import wickbench.parts.plan.SetPlan;

/** Where a set comes from, so that it can be taken up, and taken up again. */
public interface SetSource {

    SetPlan plan();

    /** Returns the name under which the framework knows a bundle of it; no other source gives the same. */
    String location(BundleId bundle);

    /** Returns the jar; empty where the framework takes it by its location. */
    Optional<InputStream> jar(BundleId bundle);

    /** Returns the maker who signed it; empty for a set of the product itself. */
    Optional<String> maker();
}
