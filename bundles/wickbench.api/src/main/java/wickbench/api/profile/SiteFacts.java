package wickbench.api.profile;

import org.osgi.annotation.versioning.ProviderType;

/** Knows what pages and reports show of the site; reads the index, so never asked on the UI thread. */
@ProviderType
@FunctionalInterface
public interface SiteFacts {

    /** Returns the site as it is now. */
    Site now();
}
