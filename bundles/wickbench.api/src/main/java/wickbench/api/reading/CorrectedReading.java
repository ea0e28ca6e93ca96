package wickbench.api.reading;

import java.util.UUID;

/**
 * The body of {@code reading.corrected}: a new statement of an earlier reading; the earlier one stays.
 *
 * @param corrects the id of the entry that recorded the reading first
 * @param reason why, in the words of the person who corrects
 * @param now the reading as it should have been recorded, judged anew by the method of then
 */
public record CorrectedReading(UUID corrects, String reason, RecordedReading now) {
    public static final String KIND = "reading.corrected";
    public static final int VERSION = 1;
}
