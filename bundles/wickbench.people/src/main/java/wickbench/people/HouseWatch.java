package wickbench.people;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.SecretWatch;
import wickbench.api.authority.SecretWatch.Notice.Ending;
import wickbench.api.authority.SecretWatch.Notice.Guessed;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.Row;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteProfile;

/** Knows who is locked out at the moment, and whose passphrase ends soon. */
@Component
public final class HouseWatch implements SecretWatch {
    /** How early it is told; common practice, no source. */
    static final int DAYS_AHEAD = 14;

    private final Home home;
    private final Index index;
    private final Roster roster;
    private final Aging aging;

    @Activate
    public HouseWatch(
            @Reference Home home, @Reference Index index, @Reference Roster roster, @Reference SiteProfile profile) {
        this.home = home;
        this.index = index;
        this.roster = roster;
        aging = new Aging(home, profile);
    }

    @Override
    public List<Notice> now() {
        return Stream.<Notice>concat(guessed(), ending()).toList();
    }

    private Stream<Guessed> guessed() {
        List<Guessed> waiting = index.read(
                PeopleView.NAME,
                rows -> rows.read(
                        "select person, failures, last_at from failure where failures >= ?",
                        HouseWatch::guessed,
                        Attempts.FREE));
        return waiting.stream()
                .filter(each -> home.clock().instant().isBefore(each.until()))
                .sorted(Comparator.comparing(Guessed::failures).reversed());
    }

    private static Guessed guessed(Row row) {
        int failures = Math.toIntExact(row.whole("failures"));
        Optional<PersonId> who = Optional.of(row.text("person"))
                .filter(person -> !person.equals(PeopleView.NOBODY))
                .map(PersonId::new);
        return new Guessed(who, failures, row.instant("last_at").plus(Attempts.pause(failures)));
    }

    private Stream<Ending> ending() {
        Optional<LocalDate> soon = aging.today().map(today -> today.plusDays(DAYS_AHEAD));
        return roster.here().stream()
                .flatMap(known -> aging.last(known).map(last -> new Ending(known.id(), last)).stream())
                .filter(each ->
                        soon.filter(until -> !each.last().isAfter(until)).isPresent())
                .sorted(Comparator.comparing(Ending::last));
    }
}
