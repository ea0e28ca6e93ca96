package wickbench.ledger.acts;

import java.time.Instant;
import java.util.UUID;

/**
 * The last valid Negative of a point by a method before a result.
 *
 * @param at when that strip was started
 */
public record LastGood(UUID result, Instant at) {}
