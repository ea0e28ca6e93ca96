package wickbench.people;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.IntSupplier;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;

/** Hears passphrases and PINs, and remembers who sits here. */
@Component(service = {SignIn.class, HouseSignIn.class})
public final class HouseSignIn implements SignIn {
    /** How long a phrase that others set is good (ASVS 5.0 V6.4.1: a short period; the figure is common practice). */
    static final Duration ONCE = Duration.ofDays(1);

    private final Home home;
    private final Roster roster;
    private final Attempts attempts;
    private final Sittings desk;

    /** Who sits in the call of another program, which runs on one thread. */
    private final ThreadLocal<Sittings> visit = new ThreadLocal<>();

    @Activate
    public HouseSignIn(
            @Reference Home home, @Reference Journal journal, @Reference Index index, @Reference Roster roster) {
        this(home, journal, index, roster, HashCost.USUAL);
    }

    HouseSignIn(Home home, Journal journal, Index index, Roster roster, HashCost cost) {
        this.home = home;
        this.roster = roster;
        attempts = new Attempts(home, journal, index, cost);
        desk = new Sittings(() -> home.clock().instant());
    }

    /** Makes one whose new hashes have another cost; the runtime makes those of {@link HashCost#USUAL}. */
    public static HouseSignIn at(HashCost cost, Home home, Journal journal, Index index, Roster roster) {
        return new HouseSignIn(home, journal, index, roster, cost);
    }

    @Override
    public boolean asked() {
        return roster.keyed();
    }

    @Override
    public Secret secretOf(PersonId who) {
        return roster.find(who).map(Known::secret).orElse(Secret.NONE);
    }

    @Override
    public void open(PersonId who, Passphrase passphrase) {
        if (prove(who, passphrase) == Secret.ONCE) {
            throw new Refusal("sign-in.once", PeopleWords.get("sign-in.once", who));
        }
        here().open(who);
    }

    /** Hears a passphrase, and tells which sort it is; opens nothing. */
    Secret prove(PersonId who, Passphrase passphrase) {
        attempts.hear(who, Attempts.PASSPHRASE, () -> kept(who), passphrase);
        return secretOf(who);
    }

    /** Hears something else that somebody shows, and slows down who guesses it. */
    void hear(PersonId who, String shown, String kept, Passphrase typed) {
        attempts.hear(who, shown, () -> Optional.of(kept), typed);
    }

    private Optional<String> kept(PersonId who) {
        Optional<Known> known = roster.find(who);
        known.ifPresent(this::refuseKeyless);
        return known.flatMap(roster::file).flatMap(PersonFile::passphrase);
    }

    private void refuseKeyless(Known known) {
        if (known.secret() == Secret.NONE) {
            throw new Refusal("sign-in.none", PeopleWords.get("sign-in.none", known.id()));
        }
        Instant now = home.clock().instant();
        boolean over =
                known.secretAt().filter(at -> !now.isBefore(at.plus(ONCE))).isPresent();
        if (known.secret() == Secret.ONCE && over) {
            throw new Refusal("sign-in.over", PeopleWords.get("sign-in.over", known.id()));
        }
    }

    @Override
    public boolean sits(PersonId who) {
        return here().sits(who);
    }

    @Override
    public void seen(PersonId who) {
        here().seen(who);
    }

    @Override
    public void close(PersonId who) {
        attempts.lookAgain(who);
        here().close(who);
        desk.close(who);
    }

    @Override
    public int apart(IntSupplier call) {
        visit.set(new Sittings(() -> home.clock().instant()));
        try {
            return call.getAsInt();
        } finally {
            visit.remove();
        }
    }

    private Sittings here() {
        return Optional.ofNullable(visit.get()).orElse(desk);
    }

    @Override
    public PersonId atBench(String idOrBadge, Optional<Passphrase> pin) {
        return roster.here().stream()
                .filter(known ->
                        roster.file(known).filter(file -> file.wears(idOrBadge)).isPresent())
                .findFirst()
                .map(Known::id)
                .orElseGet(() -> byPin(idOrBadge, pin));
    }

    private PersonId byPin(String id, Optional<Passphrase> pin) {
        Known known = roster.here().stream()
                .filter(each -> each.id().value().equals(id.strip()))
                .findFirst()
                .orElseThrow(() -> new Refusal("people.unknown", PeopleWords.get("people.unknown", id)));
        Optional<String> kept = roster.file(known).flatMap(PersonFile::pin);
        if (kept.isPresent()) {
            Passphrase typed =
                    pin.orElseThrow(() -> new Refusal("sign-in.pin", PeopleWords.get("sign-in.pin", known.id())));
            attempts.hear(known.id(), Attempts.PIN, () -> kept, typed);
        }
        return known.id();
    }
}
