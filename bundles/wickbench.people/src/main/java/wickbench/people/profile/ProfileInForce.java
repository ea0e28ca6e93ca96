package wickbench.people.profile;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.profile.Profile;
import wickbench.api.profile.Profiles.IssuedProfile;
import wickbench.api.profile.SiteProfile;

/** Reads profiles; knows nobody, so that the authority itself can ask it. */
@Component(service = {SiteProfile.class, ProfileInForce.class})
public final class ProfileInForce implements SiteProfile {
    private final Home home;
    private final Index index;

    @Activate
    public ProfileInForce(@Reference Home home, @Reference Index index) {
        this.home = home;
        this.index = index;
    }

    @Override
    public Optional<Profile> inForce(Instant at) {
        return all().stream()
                .filter(issued -> !issued.from().isAfter(at))
                .reduce((older, newer) -> newer)
                .map(IssuedProfile::profile);
    }

    List<IssuedProfile> all() {
        if (!home.isBegun()) {
            return List.of();
        }
        return index.read(ProfileView.NAME, ProfileView::all);
    }
}
