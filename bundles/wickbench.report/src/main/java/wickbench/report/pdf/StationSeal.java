package wickbench.report.pdf;

import java.util.Optional;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;

/**
 * What of one station a report rests on, and what seals it.
 *
 * @param first the first entry that it draws from
 * @param last the last one
 * @param checkpoint empty where none of this station is at hand
 * @param key SHA-256 of the public key that signs the checkpoint; empty when it is not known
 */
public record StationSeal(
        StationId station, long first, long last, Optional<Checkpoint> checkpoint, Optional<Hash> key) {}
