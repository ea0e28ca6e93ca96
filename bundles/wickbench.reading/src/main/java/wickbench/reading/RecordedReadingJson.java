package wickbench.reading;

import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.gate.Answer;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Verdict;

/** The body of {@code reading.recorded}; the schema is {@code docs/formats/reading.recorded-1.schema.json}. */
public final class RecordedReadingJson {
    private RecordedReadingJson() {}

    /** Reads the body of an entry. */
    public static Checked<RecordedReading> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<RecordedReading> recorded = read(fields);
        return fields.finish(recorded::orElseThrow);
    }

    /** Writes the body of an entry. */
    public static Json.Obj write(RecordedReading recorded) {
        return Json.object()
                .with("reading", ReadingJson.write(recorded.reading()))
                .with("method", MethodJson.write(recorded.method()))
                .with("answers", AnswerJson.write(recorded.answers()))
                .with("verdict", VerdictJson.write(recorded.verdict()));
    }

    static Optional<RecordedReading> read(Fields fields) {
        Optional<Reading> reading = ReadingReader.reading(fields.child("reading"));
        Optional<Method> method = new MethodReader(fields.child("method")).read();
        Parts.needList(fields, "answers");
        List<Answer> answers = AnswerJson.read(fields, "answers");
        Optional<Verdict> verdict = VerdictReader.verdict(fields.child("verdict"));
        return reading.flatMap(
                read -> method.flatMap(by -> verdict.map(says -> new RecordedReading(read, by, answers, says))));
    }
}
