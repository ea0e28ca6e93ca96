package wickbench.api.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** When things were done to one strip; empty means not stated. */
public record Times(
        Optional<Instant> outOfFridge,
        Optional<Instant> extracted,
        Optional<Duration> shaken,
        Optional<Instant> started,
        Optional<Instant> read) {}
