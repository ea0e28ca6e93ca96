package wickbench.bench.run;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Map;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.reading.ReadingJson;

/** What happens in a run as lines of JSON; {@code docs/formats/run-line-1.schema.json}. */
final class RunJson {
    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    private RunJson() {}

    static Json.Obj write(Noted noted) {
        Json.Obj head = Json.object()
                .with("at", instant(noted.at().wall()))
                .with("clock", noted.at().steady())
                .with("since_ms", noted.at().since().toMillis());
        return event(head, noted.event());
    }

    private static Json.Obj event(Json.Obj head, RunEvent event) {
        if (event instanceof RunEvent.OfStrip ofStrip) {
            return ofStrip(head.with("strip", ofStrip.strip()), ofStrip);
        }
        if (event instanceof RunEvent.Begun begun) {
            return head.with("what", "begun")
                    .with("run", begun.run().toString())
                    .with("by", begun.by().value())
                    .with(
                            "strips",
                            Json.array(
                                    begun.strips().stream().map(RunJson::strip).toList()));
        }
        if (event instanceof RunEvent.Added added) {
            return head.with("what", "added").with("more", strip(added.more()));
        }
        if (event instanceof RunEvent.ClockMoved moved) {
            return head.with("what", "clock-moved").with("by_ms", moved.by().toMillis());
        }
        return head.with("what", event instanceof RunEvent.Closed ? "closed" : "resumed");
    }

    private static Json.Obj ofStrip(Json.Obj head, RunEvent.OfStrip event) {
        if (event instanceof RunEvent.Kept kept) {
            return answers(head.with("what", "kept"), kept.by(), kept.lines());
        }
        if (event instanceof RunEvent.Second second) {
            return answers(head.with("what", "second"), second.by(), second.lines());
        }
        if (event instanceof RunEvent.Recorded recorded) {
            return head.with("what", "recorded")
                    .with("reading", recorded.reading().toString());
        }
        return head.with("what", Plain.of(event).code());
    }

    /** What happens to a strip and says no more than that. */
    enum Plain implements wickbench.api.words.Coded {
        SHAKING,
        SHAKEN,
        STARTED,
        UNDONE,
        LOOKED,
        NO_SECOND,
        LOST,
        SKIPPED;

        static Plain of(RunEvent.OfStrip event) {
            String name = event.getClass().getSimpleName();
            return name.equals("NoSecond") ? NO_SECOND : valueOf(name.toUpperCase(java.util.Locale.ROOT));
        }

        RunEvent on(int strip) {
            return switch (this) {
                case SHAKING -> new RunEvent.Shaking(strip);
                case SHAKEN -> new RunEvent.Shaken(strip);
                case STARTED -> new RunEvent.Started(strip);
                case UNDONE -> new RunEvent.Undone(strip);
                case LOOKED -> new RunEvent.Looked(strip);
                case NO_SECOND -> new RunEvent.NoSecond(strip);
                case LOST -> new RunEvent.Lost(strip);
                case SKIPPED -> new RunEvent.Skipped(strip);
            };
        }
    }

    private static Json.Obj answers(Json.Obj head, PersonId by, Map<LineRole, Seen> lines) {
        Json.Obj seen = Json.object();
        for (LineRole role : LineRole.values()) {
            seen = seen.withText(
                    role.code(), Optional.ofNullable(lines.get(role)).map(Seen::code));
        }
        return head.with("by", by.value()).with("lines", seen);
    }

    private static Json.Obj strip(RunStrip strip) {
        return Json.object()
                .with("number", strip.number())
                .with("develop_ms", strip.develop().toMillis())
                .with("window_ms", strip.window().toMillis())
                .with("drawn", strip.drawn())
                .withOptional("clean", strip.clean().filter(Clean::stated).map(RunJson::clean))
                .with("unread", ReadingJson.write(strip.unread()));
    }

    static Json.Obj clean(Clean clean) {
        return Json.object()
                .withText("procedure", clean.procedure())
                .withText("by", clean.by())
                .withText("ended", clean.ended().map(RunJson::instant));
    }

    static String instant(Instant at) {
        return MILLIS.format(at);
    }
}
