package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wickbench.api.gate.Answer;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;

class RecordedReadingJsonTest {
    static RecordedReading recorded(Format format) {
        Method method = Fixtures.method(format);
        Reading reading = Fixtures.reading(Fixtures.negative(format));
        List<Answer> answers = List.of(
                new Answer.Cleared("stock", Map.of("expiry", "2027-01-31")),
                new Answer.Refused(
                        "training",
                        Map.of(),
                        List.of(new Answer.Reason("operator.lapsed", "2026-01-01", "a later date"))),
                new Answer.NotChecked("plant"));
        return new RecordedReading(
                reading, method, answers, Judgement.judge(method, reading, Surroundings.of(answers)));
    }

    @Test
    void readsWhatItWrote() {
        for (Format format : Format.values()) {
            RecordedReading recorded = recorded(format);
            Json.Obj written = RecordedReadingJson.write(recorded);
            Json.Obj parsed =
                    JsonReader.readObject("entry", written.canonical()).orRefuse();
            assertThat(RecordedReadingJson.read("entry", parsed).orRefuse()).isEqualTo(recorded);
        }
    }

    @Test
    void readsACorrection() {
        CorrectedReading corrected = new CorrectedReading(new UUID(5, 7), "wrong tube", recorded(Format.SANDWICH));
        Json.Obj parsed = JsonReader.readObject(
                        "entry", CorrectedReadingJson.write(corrected).canonical())
                .orRefuse();
        assertThat(CorrectedReadingJson.read("entry", parsed).orRefuse()).isEqualTo(corrected);
    }
}
