package wickbench.bench.owed;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Neighbourhood;
import wickbench.api.owed.VisualCheck;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;

/** The bodies of the entries about what is owed; a schema each in {@code docs/formats/}. */
final class OwedBodies {
    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final String PLACE = "place";
    private static final String LINE = "line";

    private OwedBodies() {}

    static Json.Obj write(CleanDone clean) {
        return Json.object()
                .with(PLACE, clean.place())
                .withText(LINE, clean.line())
                .with("procedure", clean.procedure())
                .with("by", clean.by().value())
                .with("ended", time(clean.ended()));
    }

    static Json.Obj write(VisualCheck check) {
        return Json.object()
                .with(PLACE, check.place())
                .withText(LINE, check.line())
                .with("result", check.result().code())
                .with("by", check.by().value())
                .with("at", time(check.at()));
    }

    static Json.Obj write(Neighbourhood neighbours) {
        return Json.object()
                .with("reading", neighbours.reading().toString())
                .with("points", Json.texts(neighbours.points()));
    }

    static CleanDone clean(Entry entry) {
        Fields fields = fields(entry);
        String place = fields.text(PLACE);
        Optional<String> line = fields.optionalText(LINE);
        String procedure = fields.text("procedure");
        Optional<PersonId> by = need(fields, "by", PersonId::new);
        Optional<Instant> ended = need(fields, "ended", OwedBodies::instant);
        return done(fields, () -> new CleanDone(place, line, procedure, by.orElseThrow(), ended.orElseThrow()));
    }

    static VisualCheck check(Entry entry) {
        Fields fields = fields(entry);
        String place = fields.text(PLACE);
        Optional<String> line = fields.optionalText(LINE);
        Optional<Visual> result = need(fields, "result", text -> Coded.of(Visual.class, text));
        Optional<PersonId> by = need(fields, "by", PersonId::new);
        Optional<Instant> at = need(fields, "at", OwedBodies::instant);
        return done(
                fields, () -> new VisualCheck(place, line, result.orElseThrow(), by.orElseThrow(), at.orElseThrow()));
    }

    static Neighbourhood neighbours(Entry entry) {
        Fields fields = fields(entry);
        Optional<UUID> reading = need(fields, "reading", UUID::fromString);
        List<String> points = new ArrayList<>(fields.texts("points"));
        return done(fields, () -> new Neighbourhood(reading.orElseThrow(), points));
    }

    private static Fields fields(Entry entry) {
        return Fields.of(entry.ref().toString(), entry.body());
    }

    /** Reads a member that must stand; what is missing is complained of. */
    private static <T> Optional<T> need(Fields fields, String name, Function<String, T> parse) {
        Optional<T> value = fields.optional(name, parse);
        if (!fields.has(name)) {
            fields.complain(name, "is missing");
        }
        return value;
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("expected a UTC time, found " + text, e);
        }
    }

    private static <T> T done(Fields fields, Supplier<T> build) {
        Checked<T> read = fields.finish(build);
        return read.orRefuse();
    }

    /** UTC with milliseconds, as all times of acts are written. */
    private static String time(Instant at) {
        return UTC.format(at);
    }
}
