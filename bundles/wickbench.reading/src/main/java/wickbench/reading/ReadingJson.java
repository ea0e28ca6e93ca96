package wickbench.reading;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.LineRole;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.Origin;
import wickbench.api.reading.Reading.SecondReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;

/**
 * Readings, not yet judged, as JSON; part of {@code docs/formats/reading.recorded-1.schema.json}.
 *
 * <p>Instants are UTC with milliseconds, durations seconds. What was written reads back equal, but that decimals lose trailing
 * zeros, instants what is finer than a millisecond, and blank texts stay out.
 */
public final class ReadingJson {
    private ReadingJson() {}

    /** Reads a reading from a JSON object. */
    public static Checked<Reading> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<Reading> reading = ReadingReader.reading(fields);
        return fields.finish(reading::orElseThrow);
    }

    /** Writes a reading so that it can be read again. */
    public static Json.Obj write(Reading reading) {
        return Json.object()
                .with("sample", sample(reading.sample()))
                .with("method", reading.method().value())
                .with("route", reading.route().code())
                .with("lot", reading.lot().value())
                .with("operator", reading.operator().value())
                .withText("observer", reading.observer().map(Object::toString))
                .with("times", times(reading.times()))
                .with("strip", strip(reading.strip()))
                .withOptional("second", reading.second().map(ReadingJson::second))
                .withOptional("pre_checks", preChecks(reading.preChecks()))
                .with("origin", origin(reading.origin()));
    }

    private static Json.Obj sample(Sample sample) {
        return Json.object()
                .with("code", sample.code())
                .withText("place", Parts.spoken(sample.place()))
                .withText("line", sample.line().flatMap(Parts::spoken))
                .withText("batch", sample.batch().flatMap(Parts::spoken))
                .withOptional("reason", sample.reason().map(Parts::json))
                .withText("reason_text", sample.reasonText().flatMap(Parts::spoken))
                .withOptional("visual", sample.visual().map(Parts::json))
                .withOptional("area_cm2", sample.area().map(Parts::json))
                .with("dilution", sample.dilution())
                .withOptional("control", sample.control().map(Parts::json));
    }

    private static Json.Obj times(Times times) {
        return Json.object()
                .withOptional("out_of_fridge", times.outOfFridge().map(Parts::json))
                .withOptional("extracted", times.extracted().map(Parts::json))
                .withOptional("shaken_s", times.shaken().map(Parts::json))
                .withOptional("started", times.started().map(Parts::json))
                .withOptional("read", times.read().map(Parts::json));
    }

    private static Json.Obj strip(Strip strip) {
        Json.Obj lines = Json.object();
        for (LineRole role : strip.format().lines()) {
            lines = lines.with(role.code(), strip.lines().get(role).code());
        }
        return Json.object().with("format", strip.format().code()).with("lines", lines);
    }

    private static Json.Obj second(SecondReading second) {
        return Json.object().with("reader", second.reader().value()).with("strip", strip(second.strip()));
    }

    private static Optional<Json> preChecks(Map<String, BigDecimal> measured) {
        Json.Obj object = Json.object();
        for (Map.Entry<String, BigDecimal> check : new TreeMap<>(measured).entrySet()) {
            object = object.with(check.getKey(), check.getValue());
        }
        return measured.isEmpty() ? Optional.empty() : Optional.of(object);
    }

    private static Json.Obj origin(Origin origin) {
        return origin instanceof Origin.Sheet sheet
                ? Json.object().with("by", "sheet").with("file", sheet.file()).with("line", sheet.line())
                : Json.object().with("by", "bench");
    }
}
