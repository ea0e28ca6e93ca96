package wickbench.people;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permission.Allowed;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.home.Home;
import wickbench.api.profile.Profile;
import wickbench.api.profile.SiteProfile;

/**
 * How long a passphrase holds, where the site profile says so (21 CFR 11.300(b)).
 *
 * <p>Without a figure there none ages: who must change what they know chooses worse (NIST SP 800-63B §5.1.1.2).
 */
final class Aging {
    private final Home home;
    private final SiteProfile profile;

    Aging(Home home, SiteProfile profile) {
        this.home = home;
        this.profile = profile;
    }

    /** Returns the last day on which somebody's passphrase holds, in the site's zone; empty where it holds for good. */
    Optional<LocalDate> last(Known known) {
        if (known.secret() != Secret.PASSPHRASE) {
            return Optional.empty();
        }
        return held().flatMap(rules -> rules.passphraseDays()
                .flatMap(days -> known.secretAt()
                        .map(at -> LocalDate.ofInstant(at, rules.zone()).plusDays(days))));
    }

    /** Returns today's date at the site; empty without a profile. */
    Optional<LocalDate> today() {
        return held().map(rules -> LocalDate.ofInstant(now(), rules.zone()));
    }

    Permission ask(Known known) {
        Optional<LocalDate> over =
                last(known).filter(last -> today().filter(last::isBefore).isPresent());
        return over.<Permission>map(
                        last -> new Denied("sign-in.aged", PeopleWords.get("sign-in.aged", known.id(), last)))
                .orElseGet(Allowed::new);
    }

    private Optional<Profile> held() {
        return profile.inForce(now());
    }

    private Instant now() {
        return home.clock().instant();
    }
}
