package wickbench.training.face;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.json.Json;
import wickbench.api.person.Person;
import wickbench.training.BenchLight;
import wickbench.training.Competence;
import wickbench.training.Due;
import wickbench.training.Happening;
import wickbench.training.Matrix;
import wickbench.training.PersonRecord;
import wickbench.training.Sight;
import wickbench.training.Terms;
import wickbench.training.round.ScoreJson;

/** What training knows, for machines. */
final class TrainingJson {
    private TrainingJson() {}

    static Json.Obj matrix(Matrix matrix) {
        return Json.object()
                .with("day", matrix.day().toString())
                .with("terms", terms(matrix.terms()))
                .with(
                        "methods",
                        Json.texts(
                                matrix.methods().stream().map(Object::toString).toList()))
                .with(
                        "people",
                        Json.array(matrix.people().stream()
                                .map(person -> person(matrix, person))
                                .toList()));
    }

    private static Json.Obj person(Matrix matrix, Person person) {
        return Json.object()
                .with("person", person.id().value())
                .withText("name", person.name())
                .with(
                        "competences",
                        Json.array(matrix.methods().stream()
                                .flatMap(method -> matrix.cell(person.id(), method).stream())
                                .map(cell -> competence(cell).with("due_soon", matrix.dueSoon(cell)))
                                .toList()));
    }

    static Json.Obj terms(Terms terms) {
        return Json.object()
                .with("months", terms.months())
                .with("untested_weeks", terms.untestedWeeks())
                .with("remind_days", terms.remindDays());
    }

    static Json.Obj competence(Competence cell) {
        return Json.object()
                .with("person", cell.person().value())
                .with("method", cell.method().value())
                .with("state", cell.state().code())
                .with("may_test", cell.state().mayTest())
                .withText("until", day(cell.until()))
                .withText("untested_until", day(cell.untestedUntil()))
                .withText("tested", day(cell.tested()))
                .withText("lapsed", cell.lapse().map(lapse -> lapse.day().toString()))
                .withText("lapsed_by", cell.lapse().map(lapse -> lapse.cause().code()))
                .with("version_read", cell.read())
                .withOptional("version", cell.version().map(ScoreJson::number))
                .withText("reason", cell.why())
                .withText("decision", cell.decided().map(UUID::toString))
                .with("clashes", cell.clashes().size());
    }

    private static Optional<String> day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString);
    }

    static Json.Obj person(PersonRecord record) {
        return Json.object()
                .with("person", record.person().value())
                .with(
                        "competences",
                        Json.array(record.competences().stream()
                                .map(TrainingJson::competence)
                                .toList()))
                .withOptional("sight", record.sight().map(TrainingJson::sight))
                .with(
                        "scores",
                        Json.array(record.scores().stream()
                                .map(score -> ScoreJson.score(score.score())
                                        .with("round", score.round().id()))
                                .toList()))
                .with(
                        "happenings",
                        Json.array(record.happenings().stream()
                                .map(TrainingJson::happening)
                                .toList()));
    }

    static Json.Obj sight(Sight sight) {
        return Json.object()
                .with("at", sight.at().toString())
                .with("vision", sight.vision().code())
                .with("how", sight.how());
    }

    static Json.Obj light(BenchLight light) {
        return Json.object()
                .with("bench", light.bench())
                .with("at", light.at().toString())
                .with("lux", light.lux())
                .with("dim", light.dim());
    }

    private static Json.Obj happening(Happening happening) {
        Json.Obj facts = Json.object();
        for (var fact : happening.facts().entrySet()) {
            facts = facts.with(fact.getKey(), fact.getValue());
        }
        return Json.object()
                .with("at", happening.at().toString())
                .with("kind", happening.entry().kind())
                .with("entry", happening.entry().ref().toString())
                .with("id", happening.entry().id().toString())
                .with("by", happening.entry().by().value())
                .with("signed", happening.signed())
                .with("facts", facts);
    }

    static Json.Obj due(Due due) {
        return Json.object()
                .with("what", due.what().code())
                .with("day", due.day().toString())
                .with("person", due.person())
                .with("about", due.about());
    }
}
