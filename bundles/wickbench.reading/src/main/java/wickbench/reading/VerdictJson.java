package wickbench.reading;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodRef;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Level;
import wickbench.api.reading.Verdict;
import wickbench.api.words.Coded;

/** Verdicts as JSON: as entries keep them, and as commands print them. */
public final class VerdictJson {
    private VerdictJson() {}

    /** Reads a verdict from a JSON object. */
    public static Checked<Verdict> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<Verdict> verdict = VerdictReader.verdict(fields);
        return fields.finish(verdict::orElseThrow);
    }

    /** Writes a verdict so that it can be read again; codes only, no sentences. */
    public static Json.Obj write(Verdict verdict) {
        return Json.object()
                .with("outcome", verdict.outcome().code())
                .with("sign", verdict.sign())
                .with("findings", list(verdict.findings(), VerdictJson::finding))
                .withOptional("level", verdict.level().map(VerdictJson::level))
                .with("owed", owed(verdict))
                .with("method", method(verdict.method()));
    }

    /**
     * Writes a verdict as commands print it.
     *
     * <p>Findings carry their sentence in the user's language. An end of the level that is open is null, and so is the level
     * of an Invalid.
     *
     * @param sample the label on the tube
     */
    public static Json.Obj report(String sample, Verdict verdict) {
        return Json.object()
                .with("sample", sample)
                .with("outcome", verdict.outcome().code())
                .with("sign", verdict.sign())
                .with("findings", list(verdict.findings(), VerdictJson::told))
                .with("level", verdict.level().<Json>map(VerdictJson::openLevel).orElse(Json.Null.NULL))
                .with("owed", owed(verdict))
                .with("method", method(verdict.method()));
    }

    private static Json.Obj finding(Finding finding) {
        return Json.object()
                .with("rule", finding.rule())
                .with("severity", finding.severity().code())
                .withText("measured", Parts.spoken(finding.measured()))
                .withText("asked", Parts.spoken(finding.asked()));
    }

    private static Json.Obj told(Finding finding) {
        return Json.object()
                .with("rule", finding.rule())
                .with("severity", finding.severity().code())
                .with("measured", finding.measured())
                .with("asked", finding.asked())
                .with("text", FindingWords.text(finding));
    }

    private static Json.Obj level(Level level) {
        return Json.object()
                .withOptional("low", level.low().map(Parts::json))
                .withOptional("high", level.high().map(Parts::json))
                .with("unit", level.unit().symbol())
                .with("basis", level.basis().code())
                .withOptional("probability", level.probability().map(Parts::json));
    }

    private static Json.Obj openLevel(Level level) {
        return Json.object()
                .with("low", level.low().map(Parts::json).orElse(Json.Null.NULL))
                .with("high", level.high().map(Parts::json).orElse(Json.Null.NULL))
                .with("unit", level.unit().symbol())
                .with("basis", level.basis().code())
                .with("probability", level.probability().map(Parts::json).orElse(Json.Null.NULL));
    }

    private static Json owed(Verdict verdict) {
        // in the order of the list, so that equal verdicts are equal bytes
        return Json.texts(verdict.owed().stream().sorted().map(Coded::code).toList());
    }

    private static Json.Obj method(MethodRef ref) {
        return Json.object().with("id", ref.id().value()).with("version", ref.version());
    }

    private static <T> Json list(List<T> items, Function<T, Json.Obj> write) {
        return Json.array(items.stream().map(write).toList());
    }
}
