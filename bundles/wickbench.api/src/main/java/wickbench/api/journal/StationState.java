package wickbench.api.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * Another station, as far as this one knows it.
 *
 * @param size how many of its entries are here
 * @param newest when it wrote the newest of them, by its own clock
 * @param keyFingerprint SHA-256 of the public key that is pinned for it
 * @param heard when something new came of it last in this run of the program
 * @param trouble why nothing of it is taken; empty while it is
 */
public record StationState(
        StationId station,
        long size,
        Optional<Instant> newest,
        Hash keyFingerprint,
        Optional<Instant> heard,
        Optional<String> trouble) {}
