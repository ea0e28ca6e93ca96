package wickbench.reading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Answer.Cleared;
import wickbench.api.gate.Answer.NotChecked;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.gate.Answer.Refused;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/** What the neighbours said, as JSON. */
final class AnswerJson {
    private AnswerJson() {}

    static Json write(List<Answer> answers) {
        return Json.array(answers.stream().map(AnswerJson::write).toList());
    }

    static List<Answer> read(Fields fields, String name) {
        return fields.children(name).stream()
                .flatMap(child -> answer(child).stream())
                .toList();
    }

    private static Json.Obj write(Answer answer) {
        Json.Obj object = Json.object().with("neighbour", answer.neighbour());
        if (answer instanceof Cleared cleared) {
            return object.with("says", "cleared").with("facts", facts(cleared.facts()));
        }
        if (answer instanceof Refused refused) {
            return object.with("says", "refused")
                    .with("facts", facts(refused.facts()))
                    .with(
                            "reasons",
                            Json.array(refused.reasons().stream()
                                    .map(AnswerJson::reason)
                                    .toList()));
        }
        boolean required = ((NotChecked) answer).required();
        Json.Obj unasked = object.with("says", "not-checked");
        return required ? unasked.with("required", true) : unasked;
    }

    private static Optional<Answer> answer(Fields fields) {
        String neighbour = fields.text("neighbour");
        String says = fields.text("says");
        return switch (says) {
            case "cleared" -> Optional.of(new Cleared(neighbour, facts(fields.child("facts"))));
            case "refused" -> Optional.of(new Refused(neighbour, facts(fields.child("facts")), reasons(fields)));
            case "not-checked" ->
                Optional.of(new NotChecked(neighbour, fields.has("required") && fields.flag("required")));
            default -> {
                fields.complain("says", "expected one of cleared, refused, not-checked, found '" + says + "'");
                yield Optional.empty();
            }
        };
    }

    /** Writes the facts that say something. */
    private static Json.Obj facts(Map<String, String> facts) {
        Json.Obj object = Json.object();
        for (Map.Entry<String, String> fact : new TreeMap<>(facts).entrySet()) {
            object = object.withText(fact.getKey(), Parts.spoken(fact.getValue()));
        }
        return object;
    }

    private static Map<String, String> facts(Fields fields) {
        Map<String, String> facts = new HashMap<>();
        for (String name : fields.names()) {
            fields.optionalText(name).ifPresent(value -> facts.put(name, value));
        }
        return facts;
    }

    private static Json.Obj reason(Reason reason) {
        return Json.object()
                .with("code", reason.code())
                .withText("measured", Parts.spoken(reason.measured()))
                .withText("asked", Parts.spoken(reason.asked()));
    }

    private static List<Reason> reasons(Fields fields) {
        Parts.needList(fields, "reasons");
        return fields.children("reasons").stream()
                .map(reason -> new Reason(
                        reason.text("code"),
                        reason.optionalText("measured").orElse(""),
                        reason.optionalText("asked").orElse("")))
                .toList();
    }
}
