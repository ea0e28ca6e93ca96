package wickbench.people;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Profile;
import wickbench.api.profile.SiteProfile;

/** What must not get lost: names that records have to carry, and the last administrator. */
@Component(service = Keeping.class)
public final class Keeping {
    /** Long enough for a weekend; common practice, no source. */
    static final Duration LOST = Duration.ofDays(3);

    private final Home home;
    private final Journal journal;
    private final Roster roster;
    private final SiteProfile profile;

    @Activate
    public Keeping(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Roster roster,
            @Reference SiteProfile profile) {
        this.home = home;
        this.journal = journal;
        this.roster = roster;
        this.profile = profile;
    }

    /** Refuses to leave the house without an administrator who can act. */
    void refuseLastAdministrator(Known changed, Set<Role> roles) {
        boolean other = roster.here().stream()
                .filter(known -> !known.id().equals(changed.id()))
                .anyMatch(this::canAct);
        if (changed.is(Role.ADMINISTRATOR) && !roles.contains(Role.ADMINISTRATOR) && !other) {
            throw new Refusal("people.last", PeopleWords.get("people.last", changed.id()));
        }
    }

    private boolean canAct(Known known) {
        return known.is(Role.ADMINISTRATOR) && (!roster.keyed() || known.secret() == Secret.PASSPHRASE);
    }

    /** Refuses while any record that names a person is younger than records are kept. */
    void refuseWhileKept(PersonId who) {
        Period kept = profile.inForce(home.clock().instant())
                .map(Profile::retention)
                .orElse(Period.ofYears(Profile.LEAST_RETENTION_YEARS));
        last(entry -> entry.by().equals(who) || mentions(entry.body(), who.value()))
                .map(at -> LocalDate.ofInstant(at, ZoneOffset.UTC).plus(kept))
                .filter(until -> home.clock()
                        .instant()
                        .isBefore(until.plusDays(1).atStartOfDay().toInstant(ZoneOffset.UTC)))
                .ifPresent(until -> {
                    throw new Refusal("people.kept", PeopleWords.get("people.kept", who, until));
                });
    }

    /** Refuses a recovery where an administrator is plainly not lost. */
    void refuseWhileAdministratorsAct() {
        Set<PersonId> administrators = roster.here().stream()
                .filter(known -> known.is(Role.ADMINISTRATOR))
                .map(Known::id)
                .collect(Collectors.toSet());
        Instant since = home.clock().instant().minus(LOST);
        last(entry -> administrators.contains(entry.by()) && !entry.kind().equals(Attempted.FAILED))
                .filter(at -> at.isAfter(since))
                .ifPresent(at -> {
                    throw new Refusal("recover.acts", PeopleWords.get("recover.acts", at, LOST.toDays()));
                });
    }

    private Optional<Instant> last(Predicate<Entry> which) {
        Instant[] last = {Instant.MIN};
        for (StationId station : journal.stations()) {
            journal.read(station, 0, entry -> {
                if (which.test(entry) && entry.at().isAfter(last[0])) {
                    last[0] = entry.at();
                }
                return true;
            });
        }
        return Optional.of(last[0]).filter(at -> !at.equals(Instant.MIN));
    }

    /** Tells whether a text anywhere in a value is just this one. */
    private static boolean mentions(Json value, String text) {
        if (value instanceof Json.Obj object) {
            return object.members().values().stream().anyMatch(member -> mentions(member, text));
        }
        if (value instanceof Json.Arr list) {
            return list.items().stream().anyMatch(item -> mentions(item, text));
        }
        return value instanceof Json.Text found && found.value().equals(text);
    }
}
