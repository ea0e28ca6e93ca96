package wickbench.training.book;

import java.util.List;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.training.BenchLight;
import wickbench.training.Observation;
import wickbench.training.Sight;

/** Bodies of what was looked at: sight, light, a person at work. */
final class Watched {
    private Watched() {}

    static Json.Obj body(Sight sight) {
        return Json.object()
                .with("person", sight.person().value())
                .with("at", Bodies.time(sight.at()))
                .with("vision", sight.vision().code())
                .with("how", sight.how());
    }

    static Sight sight(Told told) {
        Fields fields = told.fields();
        return new Sight(
                new PersonId(fields.text("person")),
                told.at(),
                Coded.of(Sight.Vision.class, fields.text("vision")),
                fields.text("how"));
    }

    static Json.Obj body(BenchLight light) {
        return Json.object()
                .with("bench", light.bench())
                .with("at", Bodies.time(light.at()))
                .with("lux", light.lux());
    }

    static Json.Obj body(Observation observation) {
        return Json.object()
                .with("person", observation.person().value())
                .with("method", observation.method().value())
                .with("route", observation.route().code())
                .with("at", Bodies.time(observation.at()))
                .with("passed", observation.passed())
                .with(
                        "steps",
                        Json.array(observation.steps().stream()
                                .map(step -> Json.object()
                                        .with("text", step.text())
                                        .with("mark", step.mark().code()))
                                .toList()))
                .withText("remark", Optional.of(observation.remark()).filter(text -> !text.isBlank()));
    }

    static Observation observation(Told told) {
        Fields fields = told.fields();
        List<Observation.Step> steps = fields.children("steps").stream()
                .map(step ->
                        new Observation.Step(step.text("text"), Coded.of(Observation.Mark.class, step.text("mark"))))
                .toList();
        return new Observation(
                new PersonId(fields.text("person")),
                new MethodId(fields.text("method")),
                Coded.of(Route.class, fields.text("route")),
                told.at(),
                steps,
                fields.optionalText("remark").orElse(""));
    }
}
