package wickbench.training.round;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.api.words.Coded;
import wickbench.training.Call;
import wickbench.training.book.Bodies;

/** The body of {@code round.called}. */
final class CallJson {
    private CallJson() {}

    static Json.Obj body(String round, Instant at, PersonId caller, List<Call> calls, Optional<String> sheet) {
        return Json.object()
                .with("round", round)
                .with("at", Bodies.time(at))
                .with("person", caller.value())
                .withText("sheet", sheet)
                .with("calls", Json.array(calls.stream().map(CallJson::call).toList()));
    }

    private static Json.Obj call(Call call) {
        Json.Obj lines = Json.object();
        for (LineRole role : call.strip().format().lines()) {
            lines = lines.with(role.code(), call.strip().lines().get(role).code());
        }
        return Json.object()
                .with("code", call.code())
                .with("lines", lines)
                .with("outcome", call.outcome().code())
                .withText("started", call.started().map(Bodies::time))
                .withText("read", call.read().map(Bodies::time));
    }

    static List<Call> calls(Fields fields, Format format) {
        return fields.children("calls").stream().map(call -> call(call, format)).toList();
    }

    private static Call call(Fields fields, Format format) {
        Fields lines = fields.child("lines");
        Map<LineRole, Seen> seen = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> seen.put(role, Coded.of(Seen.class, lines.text(role.code()))));
        return new Call(
                fields.text("code"),
                new Strip(format, seen),
                Coded.of(Outcome.class, fields.text("outcome")),
                fields.optionalInstant("started"),
                fields.optionalInstant("read"));
    }
}
