package wickbench.people.profile;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Profile;
import wickbench.api.profile.Profiles;

/** The profiles that this site has issued. */
@Component(service = Profiles.class)
public final class ProfileShelf implements Profiles {
    private final Home home;
    private final Journal journal;
    private final ProfileInForce held;
    private final Authority authority;

    @Activate
    public ProfileShelf(
            @Reference Home home,
            @Reference Journal journal,
            @Reference ProfileInForce held,
            @Reference Authority authority) {
        this.home = home;
        this.journal = journal;
        this.held = held;
        this.authority = authority;
    }

    @Override
    public Optional<Profile> inForce(Instant at) {
        return held.inForce(at);
    }

    @Override
    public List<IssuedProfile> all() {
        return held.all();
    }

    @Override
    public synchronized IssuedProfile issue(Profile profile, PersonId by, Optional<Passphrase> passphrase) {
        Json.Obj body = Json.object().with("profile", ProfileJson.write(profile));
        Draft draft = new Draft(Draft.randomId(home.chance()), by, ProfileView.ISSUED, ProfileView.VERSION, body);
        Draft allowed = authority.authorise(Act.ISSUE_PROFILE, draft, passphrase);
        EntryRef ref = journal.append(List.of(allowed)).get(0).ref();
        return all().stream()
                .filter(issued -> issued.entry().equals(ref))
                .findFirst()
                .orElseThrow();
    }
}
