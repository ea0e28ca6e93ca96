package wickbench.api.profile;

import java.time.Instant;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** What the site has decided about itself, as of then. */
@ProviderType
@FunctionalInterface
public interface SiteProfile {

    /** Returns the profile that held at an instant; empty before the first. */
    Optional<Profile> inForce(Instant at);
}
