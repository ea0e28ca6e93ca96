package wickbench.people.profile;

import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.journal.Journal;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.profile.SiteProfile;

/** Tells what the profile in force says of the site. */
@Component
public final class HouseSite implements SiteFacts {
    private final Home home;
    private final Journal journal;
    private final SiteProfile profile;

    @Activate
    public HouseSite(@Reference Home home, @Reference Journal journal, @Reference SiteProfile profile) {
        this.home = home;
        this.journal = journal;
        this.profile = profile;
    }

    @Override
    public Site now() {
        if (!home.isBegun()) {
            return Site.of(Optional.empty(), Optional.empty());
        }
        return Site.of(profile.inForce(home.clock().instant()), journal.founding());
    }
}
