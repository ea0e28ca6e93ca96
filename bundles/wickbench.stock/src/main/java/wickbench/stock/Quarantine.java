package wickbench.stock;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.journal.EntryRef;

/**
 * What holds a lot until a signed decision.
 *
 * @param id of the entry, which the decision names
 * @param at from when on it holds
 * @param about the entry of the logger file that shows it
 */
public record Quarantine(UUID id, EntryRef entry, Instant at, Cause cause, String reason, Optional<UUID> about) {}
