package wickbench.reading;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.Origin;
import wickbench.api.reading.Reading.SecondReading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.api.reading.Visual;

/** Reads a reading, section by section. */
final class ReadingReader {
    private ReadingReader() {}

    static Optional<Reading> reading(Fields fields) {
        Optional<Sample> sample = sample(fields.child("sample"));
        Optional<MethodId> method = Parts.needParsed(fields, "method", "a method id", MethodId::new);
        Optional<Route> route = Parts.needCode(fields, "route", Route.class);
        Optional<LotId> lot = Parts.needParsed(fields, "lot", "a lot number", LotId::new);
        Optional<PersonId> operator = Parts.needParsed(fields, "operator", "a person id", PersonId::new);
        Optional<PersonId> observer = fields.optional("observer", PersonId::new);
        Times times = times(fields.child("times"));
        Optional<Strip> strip = strip(fields.child("strip"));
        Optional<SecondReading> second = fields.optionalChild("second").flatMap(ReadingReader::second);
        Map<String, BigDecimal> preChecks =
                fields.optionalChild("pre_checks").map(ReadingReader::preChecks).orElse(Map.of());
        Optional<Origin> origin = origin(fields.child("origin"));
        return Parts.build(
                fields,
                () -> new Reading(
                        sample.orElseThrow(),
                        method.orElseThrow(),
                        route.orElseThrow(),
                        lot.orElseThrow(),
                        operator.orElseThrow(),
                        observer,
                        times,
                        strip.orElseThrow(),
                        second,
                        preChecks,
                        origin.orElseThrow()));
    }

    private static Optional<Sample> sample(Fields fields) {
        String code = fields.text("code");
        String place = fields.optionalText("place").orElse("");
        Optional<String> line = fields.optionalText("line");
        Optional<String> batch = fields.optionalText("batch");
        Optional<Reason> reason = Parts.code(fields, "reason", Reason.class);
        Optional<String> reasonText = fields.optionalText("reason_text");
        Optional<Visual> visual = Parts.code(fields, "visual", Visual.class);
        Optional<BigDecimal> area = Parts.decimal(fields, "area_cm2");
        Optional<BigDecimal> dilution = Parts.needDecimal(fields, "dilution");
        Optional<RunControl> control = Parts.code(fields, "control", RunControl.class);
        area.filter(some -> some.signum() <= 0)
                .ifPresent(some ->
                        fields.complain("area_cm2", "expected an area above 0 cm², found " + Decimals.text(some)));
        dilution.filter(some -> some.compareTo(BigDecimal.ONE) < 0)
                .ifPresent(some ->
                        fields.complain("dilution", "expected a dilution from 1 on, found " + Decimals.text(some)));
        return Parts.build(
                fields,
                () -> new Sample(
                        code, place, line, batch, reason, reasonText, visual, area, dilution.orElseThrow(), control));
    }

    private static Times times(Fields fields) {
        return new Times(
                Parts.instant(fields, "out_of_fridge"),
                Parts.instant(fields, "extracted"),
                Parts.seconds(fields, "shaken_s"),
                Parts.instant(fields, "started"),
                Parts.instant(fields, "read"));
    }

    private static Optional<Strip> strip(Fields fields) {
        Optional<Format> format = Parts.needCode(fields, "format", Format.class);
        Fields lines = fields.child("lines");
        Map<LineRole, Seen> answers = new EnumMap<>(LineRole.class);
        for (LineRole role : LineRole.values()) {
            Parts.code(lines, role.code(), Seen.class).ifPresent(seen -> answers.put(role, seen));
            format.ifPresent(known -> checkLine(lines, known, role));
        }
        return Parts.build(fields, () -> new Strip(format.orElseThrow(), answers));
    }

    private static void checkLine(Fields lines, Format format, LineRole role) {
        boolean asked = format.lines().contains(role);
        if (asked && !lines.has(role.code())) {
            lines.complain(role.code(), "is not answered; a " + format.code() + " strip has this line");
        }
        if (!asked && lines.has(role.code())) {
            lines.complain(role.code(), "a " + format.code() + " strip has no such line");
        }
    }

    private static Optional<SecondReading> second(Fields fields) {
        Optional<PersonId> reader = Parts.needParsed(fields, "reader", "a person id", PersonId::new);
        Optional<Strip> strip = strip(fields.child("strip"));
        return reader.flatMap(person -> strip.map(seen -> new SecondReading(person, seen)));
    }

    private static Map<String, BigDecimal> preChecks(Fields fields) {
        Map<String, BigDecimal> measured = new HashMap<>();
        for (String name : fields.names()) {
            Parts.decimal(fields, name).ifPresent(value -> measured.put(name, value));
        }
        return measured;
    }

    private static Optional<Origin> origin(Fields fields) {
        String by = fields.text("by");
        return switch (by) {
            case "bench" -> Optional.of(new Origin.Bench());
            case "sheet" -> Optional.of(new Origin.Sheet(fields.text("file"), Parts.count(fields, "line")));
            default -> {
                fields.complain("by", "expected one of bench, sheet, found '" + by + "'");
                yield Optional.empty();
            }
        };
    }
}
