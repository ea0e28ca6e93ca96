package wickbench.report.result;

import java.util.Optional;
import wickbench.api.journal.Entry;
import wickbench.api.reading.RecordedReading;

/**
 * One statement of a result: how it was recorded, or corrected.
 *
 * @param reason why it was corrected; empty for the first statement
 */
record Statement(Entry entry, RecordedReading reading, Optional<String> reason) {}
