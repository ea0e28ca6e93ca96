package wickbench.training.book;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.drill.Drill;
import wickbench.drill.DrillPlan;
import wickbench.drill.DrillResult;
import wickbench.drill.DrillResult.Caution;
import wickbench.training.DrillRun;
import wickbench.training.Drilled;

/** The body of a kept drill: what it found, and from what that can be reckoned again. */
final class DrillJson {
    private static final char SEEN = 'y';
    private static final char NOT = 'n';

    private DrillJson() {}

    static Json.Obj write(DrillRun run, DrillResult result, PersonId person, Instant at) {
        DrillPlan plan = run.plan();
        return Json.object()
                .with("person", person.value())
                .with("at", Bodies.time(at))
                .with("model", Drill.MODEL)
                .with("seed", run.seed())
                .with("line_px", run.line())
                .with(
                        "plan",
                        Json.object()
                                .with("blanks", plan.blanks())
                                .with("plain", plan.plain())
                                .with("least", plan.least())
                                .with("most", plan.most())
                                .with("narrow", number(plan.narrow())))
                .with("answers", answers(run.answers()))
                .with("strips", result.strips())
                .with("threshold", number(result.threshold()))
                .with("lower", number(result.lower()))
                .with("upper", number(result.upper()))
                .with("confidence", number(result.confidence()))
                .with("blanks", result.blanks())
                .with("alarms", result.alarms())
                .with("plain", result.plain())
                .with("missed", result.missed())
                .with(
                        "cautions",
                        Json.texts(EnumSet.allOf(Caution.class).stream()
                                .filter(result.cautions()::contains)
                                .map(Caution::code)
                                .toList()));
    }

    static Drilled read(EntryRef entry, Json.Obj body) {
        Fields fields = Fields.of(entry.toString(), body);
        Set<Caution> cautions = fields.texts("cautions").stream()
                .map(code -> Coded.of(Caution.class, code))
                .collect(Collectors.toSet());
        return new Drilled(
                entry,
                new PersonId(fields.text("person")),
                fields.optionalInstant("at").orElseThrow(),
                (int) fields.whole("strips"),
                fields.decimal("threshold").doubleValue(),
                fields.decimal("lower").doubleValue(),
                fields.decimal("upper").doubleValue(),
                (int) fields.whole("blanks"),
                (int) fields.whole("alarms"),
                (int) fields.whole("plain"),
                (int) fields.whole("missed"),
                cautions);
    }

    /** Reads what the drill is reckoned again from. */
    static DrillRun run(EntryRef entry, Json.Obj body) {
        Fields fields = Fields.of(entry.toString(), body);
        Fields plan = fields.child("plan");
        return new DrillRun(
                new DrillPlan(
                        (int) plan.whole("blanks"),
                        (int) plan.whole("plain"),
                        (int) plan.whole("least"),
                        (int) plan.whole("most"),
                        plan.decimal("narrow").doubleValue()),
                fields.whole("seed"),
                (int) fields.whole("line_px"),
                fields.text("answers").chars().mapToObj(each -> each == SEEN).toList());
    }

    private static String answers(List<Boolean> answers) {
        StringBuilder text = new StringBuilder();
        answers.forEach(seen -> text.append(seen ? SEEN : NOT));
        return text.toString();
    }

    private static BigDecimal number(double value) {
        return Json.Num.rounded(BigDecimal.valueOf(value));
    }
}
