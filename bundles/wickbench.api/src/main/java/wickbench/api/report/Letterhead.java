package wickbench.api.report;

import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/** What stands above every page of this site; a service of whoever keeps the site's profile. */
@ConsumerType
@FunctionalInterface
public interface Letterhead {

    /** Returns the plant's name, if it was stated. */
    Optional<String> plant();
}
