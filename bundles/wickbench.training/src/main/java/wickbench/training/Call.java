package wickbench.training;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;

/**
 * What somebody called of one strip.
 *
 * @param code what is sealed on the strip
 * @param outcome what they said it means
 */
public record Call(String code, Strip strip, Outcome outcome, Optional<Instant> started, Optional<Instant> read) {

    /** Returns how long after the start it was read, where both were stated. */
    public Optional<Duration> elapsed() {
        return started.flatMap(from -> read.map(to -> Duration.between(from, to)));
    }
}
