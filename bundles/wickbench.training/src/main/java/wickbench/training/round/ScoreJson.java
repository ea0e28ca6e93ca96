package wickbench.training.round;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.training.Agreement;
import wickbench.training.ReaderScore;
import wickbench.training.ReaderScore.Failure;
import wickbench.training.ReaderScore.Tally;
import wickbench.training.ReaderScore.Topic;
import wickbench.training.book.Bodies;

/** The body of {@code round.scored}; its parts are also what commands print for machines. */
public final class ScoreJson {
    private ScoreJson() {}

    static Json.Obj body(String round, Instant at, List<ReaderScore> scores, Agreement agreement) {
        return Json.object()
                .with("round", round)
                .with("at", Bodies.time(at))
                .with("scores", Json.array(scores.stream().map(ScoreJson::score).toList()))
                .with("agreement", agreement(agreement));
    }

    public static Json.Obj agreement(Agreement agreement) {
        return Json.object()
                .with("readers", RoundJson.people(agreement.readers()))
                .withOptional("kappa", agreement.kappa().map(ScoreJson::number))
                .withOptional("ac1", agreement.ac1().map(ScoreJson::number))
                .with("disputed", Json.texts(agreement.disputed()));
    }

    public static Json.Obj score(ReaderScore score) {
        return Json.object()
                .with("reader", score.reader().value())
                .with("passed", score.passed())
                .with(
                        "tallies",
                        Json.array(
                                score.tallies().stream().map(ScoreJson::tally).toList()))
                .with("inside", score.inside())
                .with("called", score.called())
                .withOptional("kappa", score.kappa().map(ScoreJson::number))
                .withOptional("ac1", score.ac1().map(ScoreJson::number))
                .withOptional("d_prime", score.dPrime().map(ScoreJson::number))
                .with(
                        "failures",
                        Json.array(score.failures().stream()
                                .map(failure -> Json.object()
                                        .with("topic", failure.topic().code())
                                        .with("wrong", failure.wrong())
                                        .with("allowed", failure.allowed()))
                                .toList()));
    }

    private static Json.Obj tally(Tally tally) {
        return Json.object()
                .with("topic", tally.topic().code())
                .with("right", tally.right())
                .with("of", tally.of())
                .with("lower", number(tally.share().lower()))
                .with("upper", number(tally.share().upper()));
    }

    public static Json.Num number(double value) {
        return new Json.Num(Json.Num.rounded(BigDecimal.valueOf(value)));
    }

    static List<ReaderScore> scores(Fields fields) {
        return fields.children("scores").stream().map(ScoreJson::score).toList();
    }

    private static ReaderScore score(Fields fields) {
        return new ReaderScore(
                new PersonId(fields.text("reader")),
                fields.children("tallies").stream()
                        .map(tally -> Scoring.tally(topic(tally), (int) tally.whole("right"), (int) tally.whole("of")))
                        .toList(),
                (int) fields.whole("inside"),
                (int) fields.whole("called"),
                number(fields, "kappa"),
                number(fields, "ac1"),
                number(fields, "d_prime"),
                fields.children("failures").stream()
                        .map(failure -> new Failure(
                                topic(failure), (int) failure.whole("wrong"), (int) failure.whole("allowed")))
                        .toList());
    }

    private static Topic topic(Fields fields) {
        return Coded.of(Topic.class, fields.text("topic"));
    }

    private static Optional<Double> number(Fields fields, String name) {
        return fields.optionalDecimal(name).map(BigDecimal::doubleValue);
    }
}
