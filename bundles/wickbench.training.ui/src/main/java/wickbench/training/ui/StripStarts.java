package wickbench.training.ui;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.person.PersonId;

/**
 * When strips of rounds were started, until they are called. Touched by the UI thread only.
 *
 * <p>Outlives the page, which is made anew in another look, or left and opened again; not the program.
 */
final class StripStarts {
    private final Map<Strip, Instant> started = new HashMap<>();

    private record Strip(String round, PersonId reader, String code) {}

    /** Starts a strip; a strip is started once. */
    void start(String round, PersonId reader, String code, Instant at) {
        started.putIfAbsent(new Strip(round, reader, code), at);
    }

    /** Takes back a start that was a mistake. */
    void undo(String round, PersonId reader, String code) {
        started.remove(new Strip(round, reader, code));
    }

    Optional<Instant> of(String round, PersonId reader, String code) {
        return Optional.ofNullable(started.get(new Strip(round, reader, code)));
    }
}
