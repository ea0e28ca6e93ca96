package wickbench.ledger;

import java.util.Optional;
import wickbench.api.journal.Entry;
import wickbench.api.reading.RecordedReading;

/**
 * What one entry says of a result.
 *
 * @param entry the entry with its place, its time, who wrote it, and the leaf hash by which it is sealed
 * @param reason why it was corrected; empty for a recording
 * @param counts whether the result stands by this statement
 */
public record Statement(Entry entry, Optional<String> reason, RecordedReading reading, boolean counts) {}
