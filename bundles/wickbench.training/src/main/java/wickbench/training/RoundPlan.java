package wickbench.training;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import wickbench.api.method.Format;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

/**
 * What a round is to be.
 *
 * @param id short, unique for ever
 * @param format of its strips
 * @param develop from liquid on the strip to the earliest reading
 * @param window how long after that it may still be read
 * @param readers who are to call every strip
 * @param experts whose blind consensus makes the key of near-limit strips; they read with the readers and are not judged
 * @param panel the strips where they are known beforehand, as many as the design says; else empty
 * @param keyMaker who made the key, and how, in the site's words
 */
public record RoundPlan(
        String id,
        MethodId method,
        Format format,
        Duration develop,
        Duration window,
        Design design,
        List<PersonId> readers,
        List<PersonId> experts,
        List<PanelStrip> panel,
        String keyMaker) {
    public RoundPlan {
        readers = List.copyOf(readers);
        experts = List.copyOf(experts);
        panel = List.copyOf(panel);
    }

    /** Returns how many experts must agree at least. */
    public static int leastExperts() {
        return 2;
    }

    /** Tells whether the key of near-limit strips is still to be made by the experts. */
    public boolean asksExperts() {
        return panel.isEmpty() && design.of(StripClass.NEAR_LIMIT) > 0;
    }

    /** Returns the latest time after the start at which a strip may be read. */
    public Duration latest() {
        return develop.plus(window);
    }

    /** Returns everybody who is to call. */
    public List<PersonId> callers() {
        return java.util.stream.Stream.concat(readers.stream(), experts.stream())
                .toList();
    }

    /** Tells whether a reading that long after the start is inside the window; both ends are. */
    public boolean inside(Optional<Duration> elapsed) {
        return elapsed.filter(time -> time.compareTo(develop) >= 0 && time.compareTo(latest()) <= 0)
                .isPresent();
    }
}
