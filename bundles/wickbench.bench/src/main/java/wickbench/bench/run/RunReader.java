package wickbench.bench.run;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.reading.ReadingJson;

/** Reads what {@link RunJson} wrote. */
final class RunReader {
    private final Fields fields;
    private final Json.Obj object;
    private final String source;

    private RunReader(String source, Json.Obj object) {
        this.source = source;
        this.object = object;
        this.fields = Fields.of(source, object);
    }

    static Checked<Noted> read(String source, Json.Obj object) {
        return new RunReader(source, object).read();
    }

    private Checked<Noted> read() {
        Instant wall = instant("at");
        String clock = fields.text("clock");
        long since = fields.whole("since_ms");
        RunEvent event = event(fields.text("what"));
        return fields.finish(() -> new Noted(new Moment(wall, clock, Duration.ofMillis(since)), event));
    }

    private RunEvent event(String what) {
        return switch (what) {
            case "begun" -> new RunEvent.Begun(id("run"), person(), strips());
            case "added" -> new RunEvent.Added(strip(fields.child("more"), member(object, "more")));
            case "clock-moved" -> new RunEvent.ClockMoved(Duration.ofMillis(fields.whole("by_ms")));
            case "resumed" -> new RunEvent.Resumed();
            case "closed" -> new RunEvent.Closed();
            default -> ofStrip(what, Math.toIntExact(fields.whole("strip")));
        };
    }

    private RunEvent ofStrip(String what, int strip) {
        return switch (what) {
            case "kept" -> new RunEvent.Kept(strip, person(), lines());
            case "second" -> new RunEvent.Second(strip, person(), lines());
            case "recorded" -> new RunEvent.Recorded(strip, id("reading"));
            default ->
                fields.optional("what", text -> Coded.of(RunJson.Plain.class, text))
                        .map(plain -> plain.on(strip))
                        .orElseGet(RunEvent.Resumed::new);
        };
    }

    private List<RunStrip> strips() {
        List<Json> items =
                object.get("strips").map(list -> ((Json.Arr) list).items()).orElse(List.of());
        List<Fields> children = fields.children("strips");
        return java.util.stream.IntStream.range(0, children.size())
                .mapToObj(i -> strip(children.get(i), (Json.Obj) items.get(i)))
                .toList();
    }

    private RunStrip strip(Fields of, Json.Obj whole) {
        of.has("unread");
        of.optionalChild("unread").ifPresent(unread -> unread.names().forEach(unread::has));
        return new RunStrip(
                Math.toIntExact(of.whole("number")),
                ReadingJson.read(source, member(whole, "unread")).orRefuse(),
                Duration.ofMillis(of.whole("develop_ms")),
                Duration.ofMillis(of.whole("window_ms")),
                of.optionalChild("clean").map(RunReader::clean),
                of.flag("drawn"));
    }

    private static Json.Obj member(Json.Obj object, String name) {
        return object.get(name)
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .orElse(Json.object());
    }

    private static Clean clean(Fields of) {
        return new Clean(of.optionalText("procedure"), of.optionalText("by"), of.optionalInstant("ended"));
    }

    private Map<LineRole, Seen> lines() {
        Fields of = fields.child("lines");
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        for (LineRole role : LineRole.values()) {
            of.optional(role.code(), text -> Coded.of(Seen.class, text)).ifPresent(seen -> lines.put(role, seen));
        }
        return lines;
    }

    private Instant instant(String name) {
        Optional<Instant> found = fields.optionalInstant(name);
        return found.orElse(Instant.EPOCH);
    }

    private PersonId person() {
        return new PersonId(fields.text("by"));
    }

    private UUID id(String name) {
        return UUID.fromString(fields.text(name));
    }
}
