package wickbench.people;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import wickbench.api.person.PersonId;

/** Who sits here, since when they did something last; in this program only. */
final class Sittings {
    /** A walk to the line and back; common practice, no source. */
    static final Duration IDLE = Duration.ofMinutes(10);

    private final InstantSource clock;
    private final Map<PersonId, Instant> seen = new ConcurrentHashMap<>();

    Sittings(InstantSource clock) {
        this.clock = clock;
    }

    void open(PersonId who) {
        seen.put(who, clock.instant());
    }

    boolean sits(PersonId who) {
        return Optional.ofNullable(seen.get(who))
                .filter(last -> clock.instant().isBefore(last.plus(IDLE)))
                .isPresent();
    }

    /** Keeps a sitting that has not ended yet; one that has ended is not brought back. */
    void seen(PersonId who) {
        Instant now = clock.instant();
        seen.computeIfPresent(who, (id, last) -> now.isBefore(last.plus(IDLE)) ? now : null);
    }

    void close(PersonId who) {
        seen.remove(who);
    }
}
