package wickbench.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Amounts;
import wickbench.api.method.Method.Factor;
import wickbench.api.method.Method.Limit;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Method.Step;
import wickbench.api.method.Method.Target;
import wickbench.api.method.Method.Timing;

/**
 * Methods as JSON documents; the schema is {@code docs/formats/method-1.schema.json}.
 *
 * <p>Reading checks all that can be wrong with a method and names each with its field. What was written reads back as an
 * equal method, but that its decimals lose trailing zeros.
 */
public final class MethodJson {
    private MethodJson() {}

    /** Reads a method from a JSON text. */
    public static Checked<Method> read(String source, String text) {
        return JsonReader.readObject(source, text).then(object -> read(source, object));
    }

    /** Reads a method from a JSON object. */
    public static Checked<Method> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<Method> method = new MethodReader(fields).read();
        return fields.finish(method::orElseThrow);
    }

    /** Writes a method so that it can be read again. */
    public static Json.Obj write(Method method) {
        return Json.object()
                .with("id", method.ref().id().value())
                .with("version", method.ref().version())
                .with("title", method.title())
                .with("kit", method.kit())
                .withText("insert_revision", method.insertRevision())
                .with("target", target(method.target()))
                .with("format", method.format().code())
                .with("marks", marks(method))
                .with("route", method.route().code())
                .with("limit", limit(method.limit()))
                .withOptional("positive_from", method.positiveFrom().map(Parts::json))
                .withOptional("hook_onset", method.hookOnset().map(Parts::json))
                .withOptional("faint_test", method.faintTest().map(Parts::json))
                .with("timing", timing(method.timing()))
                .with("amounts", amounts(method.amounts()))
                .withOptional("storage", method.storage().map(MethodJson::range))
                .withOptional("pre_checks", list(method.preChecks(), MethodJson::preCheck))
                .withOptional("steps", list(method.steps(), MethodJson::step))
                .withOptional("cautions", list(method.cautions(), Json.Text::new));
    }

    private static Json.Obj target(Target target) {
        return Json.object()
                .with("name", target.name())
                .with("basis", target.basis().code())
                .withOptional("factors", list(target.factors(), MethodJson::factor))
                .withOptional("not_seen", list(target.notSeen(), Json.Text::new));
    }

    private static Json.Obj factor(Factor factor) {
        return Json.object()
                .with("to", factor.to().code())
                .with("factor", factor.factor())
                .with("source", factor.source());
    }

    private static Json.Obj marks(Method method) {
        Json.Obj marks = Json.object();
        for (LineRole role : method.format().lines()) {
            marks = marks.with(role.code(), method.marks().get(role));
        }
        return marks;
    }

    private static Json.Obj limit(Limit limit) {
        return Parts.json(limit.value())
                .with("holds", limit.holds().code())
                .withOptional("probability", limit.probability().map(Parts::json));
    }

    private static Json.Obj timing(Timing timing) {
        return Json.object()
                .with("develop_s", Parts.json(timing.develop()))
                .with("window_s", Parts.json(timing.window()))
                .withOptional("warm_up_s", timing.warmUp().map(Parts::json))
                .withOptional("shake_s", timing.shake().map(Parts::json))
                .withOptional("extract_hold_s", timing.extractHold().map(Parts::json));
    }

    private static Json.Obj amounts(Amounts amounts) {
        return Json.object()
                .with("sample", Parts.json(amounts.sample()))
                .withOptional("liquid", amounts.liquid().map(Parts::json));
    }

    private static Json.Obj range(Range range) {
        return Json.object()
                .with("low", range.low())
                .with("high", range.high())
                .with("unit", range.unit().symbol());
    }

    private static Json.Obj preCheck(PreCheck check) {
        Map<String, Json> range = range(check.range()).members();
        Json.Obj named = Json.object().with("name", check.name());
        for (Map.Entry<String, Json> member : range.entrySet()) {
            named = named.with(member.getKey(), member.getValue());
        }
        return named;
    }

    private static Json.Obj step(Step step) {
        return Json.object()
                .with("text", step.text())
                .withOptional("quantity", step.quantity().map(Parts::json))
                .withOptional("lasts_s", step.lasts().map(Parts::json))
                .withText("caution", step.caution());
    }

    /** Writes a list only if there is something in it. */
    private static <T> Optional<Json> list(List<T> items, Function<T, Json> write) {
        return Optional.of(items).filter(some -> !some.isEmpty()).map(some -> {
            Stream<Json> written = some.stream().map(write);
            return Json.array(written.toList());
        });
    }
}
