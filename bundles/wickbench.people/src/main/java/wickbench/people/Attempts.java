package wickbench.people;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;

/**
 * Hears secrets and makes guessing slow: after five wrong ones in a row each further one has to wait, twice as long each time.
 *
 * <p>Each one heard and found wrong is an entry, written before the answer is given, so that killing the program gives no free
 * guess. What comes during a wait is turned away unheard and only counted: a million guesses make a few entries a day.
 */
final class Attempts {
    static final String PASSPHRASE = "passphrase";
    static final String PIN = "pin";
    static final String CODE = "code";

    /** Wrong ones in a row that cost nothing but an entry (ASVS 5.0 V6.3.1 asks for a limit; the figure is common practice). */
    static final int FREE = 5;

    static final Duration FIRST_WAIT = Duration.ofMinutes(1);
    static final Duration LONGEST_WAIT = Duration.ofHours(1);

    private static final int MOST_DOUBLINGS = 10;

    private final Home home;
    private final Journal journal;
    private final Index index;
    private final HashCost cost;
    private final Map<String, Long> turnedAway = new HashMap<>();

    /** Waits that this program knows of, by what was typed: who is turned away costs nothing but a look here. */
    private final Map<String, Failures> waits = new HashMap<>();

    Attempts(Home home, Journal journal, Index index, HashCost cost) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.cost = cost;
    }

    private record Failures(String key, int count, Optional<Instant> last) {
        Optional<Instant> until() {
            return last.filter(at -> count >= FREE).map(at -> at.plus(pause(count)));
        }
    }

    /**
     * Compares a secret with the hash that is kept.
     *
     * @param keptOf looks the hash up; empty when nobody has the id, and a hash is made all the same, so that the time tells nothing
     * @throws Refusal {@code sign-in.wrong} or {@code sign-in.paused}
     */
    synchronized void hear(PersonId who, String shown, Supplier<Optional<String>> keptOf, Passphrase secret) {
        refuseWaiting(who, shown);
        Optional<String> kept = keptOf.get();
        Optional<PersonId> person = kept.map(hash -> who);
        Failures before = failures(PeopleView.key(person), shown);
        refusePaused(before, who, shown, PeopleView.key(person));
        boolean right = kept.map(hash -> Argon2id.matches(hash, secret)).orElseGet(() -> {
            Argon2id.hash(secret, cost, home.chance());
            return false;
        });
        if (!right) {
            record(Attempted.FAILED, who, person, shown, before.count() + 1);
            throw new Refusal("sign-in.wrong", PeopleWords.get("sign-in.wrong." + shown, who));
        }
        if (before.count() > 0) {
            record(Attempted.GOOD, who, person, shown, before.count());
        }
    }

    /** Forgets what this program knows of a person's wait; the table still tells. */
    synchronized void lookAgain(PersonId who) {
        waits.remove(who.value() + PASSPHRASE);
    }

    private void refuseWaiting(PersonId who, String shown) {
        Failures known = waits.get(who.value() + shown);
        if (known != null) {
            refusePaused(known, who, shown, known.key());
            waits.remove(who.value() + shown);
        }
    }

    private void refusePaused(Failures before, PersonId who, String shown, String key) {
        Optional<Instant> until = before.until().filter(home.clock().instant()::isBefore);
        if (until.isPresent()) {
            // typed ids are many; those nobody has are found in the table again
            if (!key.equals(PeopleView.NOBODY)) {
                waits.put(who.value() + shown, before);
            }
            turnedAway.merge(key + shown, 1L, Long::sum);
            throw new Refusal("sign-in.paused", PeopleWords.get("sign-in.paused", before.count(), until.get()));
        }
    }

    private void record(String kind, PersonId by, Optional<PersonId> person, String shown, int failures) {
        long away = Optional.ofNullable(turnedAway.remove(PeopleView.key(person) + shown))
                .orElse(0L);
        Attempted body = new Attempted(person, shown, failures, away);
        journal.append(List.of(new Draft(Draft.randomId(home.chance()), by, kind, Attempted.VERSION, body.body())));
    }

    private Failures failures(String person, String shown) {
        return index.read(
                        PeopleView.NAME,
                        rows -> rows.first(
                                "select failures, last_at from failure where person = ? and shown = ?",
                                row -> new Failures(
                                        person,
                                        Math.toIntExact(row.whole("failures")),
                                        Optional.of(row.instant("last_at"))),
                                person,
                                shown))
                .orElse(new Failures(person, 0, Optional.empty()));
    }

    /** Returns how long one waits after so many wrong ones in a row. */
    static Duration pause(int failures) {
        int doublings = Math.min(failures - FREE, MOST_DOUBLINGS);
        Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
        return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
    }
}
