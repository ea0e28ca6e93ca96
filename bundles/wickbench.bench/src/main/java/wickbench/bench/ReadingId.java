package wickbench.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.ReadingJson;

/** The id of a reading: it follows from what was seen and when, so the same reading has the same id wherever it comes from. */
final class ReadingId {
    private ReadingId() {}

    static UUID of(Reading reading) {
        Map<String, Json> content =
                new LinkedHashMap<>(ReadingJson.write(reading).members());
        // the same row typed from a copy of the sheet, or moved in it, is still the same reading
        content.remove("origin");
        return Draft.contentId(RecordedReading.KIND, new Json.Obj(content));
    }

    static UUID ofCorrection(CorrectedReading correction) {
        return Draft.contentId(CorrectedReading.KIND, CorrectedReadingJson.write(correction));
    }
}
