package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import wickbench.api.gate.Answer;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Verdict;

class JsonLawsTest {
    @Property
    void methodsReadBack(@ForAll long seed) {
        Method method = new Anything(seed).method();
        String written = MethodJson.write(method).canonical();
        assertThat(MethodJson.read("m", written).orRefuse()).isEqualTo(method);
    }

    @Property
    void readingsAndTheirVerdictsReadBack(@ForAll long seed) {
        RecordedReading recorded = recorded(seed);
        Reading reading = recorded.reading();
        Verdict verdict = recorded.verdict();
        assertThat(ReadingJson.read("r", parsed(ReadingJson.write(reading))).orRefuse())
                .isEqualTo(reading);
        assertThat(VerdictJson.read("v", parsed(VerdictJson.write(verdict))).orRefuse())
                .isEqualTo(verdict);
        assertThat(RecordedReadingJson.read("e", parsed(RecordedReadingJson.write(recorded)))
                        .orRefuse())
                .isEqualTo(recorded);
        CorrectedReading corrected = new CorrectedReading(new UUID(seed, ~seed), "a reason", recorded);
        assertThat(CorrectedReadingJson.read("e", parsed(CorrectedReadingJson.write(corrected)))
                        .orRefuse())
                .isEqualTo(corrected);
    }

    @Property
    void aReadingReadBackIsJudgedTheSame(@ForAll long seed) {
        RecordedReading recorded = recorded(seed);
        RecordedReading read = RecordedReadingJson.read("e", parsed(RecordedReadingJson.write(recorded)))
                .orRefuse();
        assertThat(Judgement.judge(read.method(), read.reading(), Surroundings.of(read.answers())))
                .isEqualTo(recorded.verdict());
    }

    private static RecordedReading recorded(long seed) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading reading = any.reading(method);
        List<Answer> answers = any.answers();
        return new RecordedReading(
                reading, method, answers, Judgement.judge(method, reading, Surroundings.of(answers)));
    }

    private static Json.Obj parsed(Json.Obj written) {
        return RecordedReadingJsonTest.parsed(written);
    }
}
