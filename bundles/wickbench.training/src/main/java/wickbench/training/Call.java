package wickbench.training;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.reading.Patterns;

/**
 * What somebody called of one strip.
 *
 * @param code what is sealed on the strip
 * @param outcome what they said it means
 */
public record Call(String code, Strip strip, Outcome outcome, Optional<Instant> started, Optional<Instant> read) {

    /** Makes a call of lines alone, which say by themselves what they mean. */
    public static Call ofLines(String code, Strip strip, Optional<Instant> started, Optional<Instant> read) {
        return new Call(code, strip, meaning(strip), started, read);
    }

    /** Returns what the lines of a strip say by themselves. */
    public static Outcome meaning(Strip strip) {
        return Patterns.of(strip.format()).stream()
                .filter(pattern -> pattern.strip().equals(strip))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no pattern for " + strip))
                .outcome();
    }

    /** Returns how long after the start it was read, where both were stated. */
    public Optional<Duration> elapsed() {
        return started.flatMap(from -> read.map(to -> Duration.between(from, to)));
    }
}
