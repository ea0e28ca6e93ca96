package wickbench.bench.run;

import java.time.Duration;
import java.util.Optional;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** The entry of a finished run: what its readings do not say themselves; {@code docs/formats/run.recorded-1.schema.json}. */
final class RunEntry {
    static final String KIND = "run.recorded";
    static final int VERSION = 1;

    private RunEntry() {}

    static Draft draft(RunState run, PersonId by) {
        Json.Obj body = Json.object()
                .with("run", run.id().toString())
                .with("began", RunJson.instant(run.begun().wall()))
                .with("by", run.by().value())
                .with(
                        "strips",
                        Json.array(run.strips().stream().map(RunEntry::strip).toList()))
                .with(
                        "clock_moved_ms",
                        Json.array(run.clockMoves().stream()
                                .map(move -> (Json) new Json.Num(java.math.BigDecimal.valueOf(move.toMillis())))
                                .toList()))
                .with("brought_back", run.resumed());
        return new Draft(run.id(), by, KIND, VERSION, body);
    }

    private static Json.Obj strip(StripState strip) {
        Optional<Moment.Elapsed> elapsed = strip.looked()
                .flatMap(strip::elapsed)
                .filter(some -> !some.span().isNegative());
        return Json.object()
                .with("number", strip.number())
                .withText("reading", strip.recorded().map(Object::toString))
                .withText("started", strip.started().map(at -> RunJson.instant(at.wall())))
                .withText("looked", strip.looked().map(at -> RunJson.instant(at.wall())))
                .withOptional("elapsed_ms", elapsed.map(some -> number(some.span())))
                .withOptional(
                        "elapsed_by", elapsed.map(some -> new Json.Text(some.sure() ? "steady-clock" : "wall-clock")))
                .with("starts_undone", strip.undone().size())
                .withOptional(
                        "clean", strip.strip().clean().filter(Clean::stated).map(RunJson::clean))
                .withOptional("second", second(strip))
                .with("fate", fate(strip));
    }

    private static Json number(Duration span) {
        return new Json.Num(java.math.BigDecimal.valueOf(span.toMillis()));
    }

    private static Optional<Json> second(StripState strip) {
        return strip.asksForSecond()
                ? Optional.of(new Json.Text(strip.second().isPresent() ? "given" : "nobody-came"))
                : Optional.empty();
    }

    private static String fate(StripState strip) {
        return strip.skipped() ? "skipped" : strip.lost() ? "not-looked-at" : "read";
    }
}
