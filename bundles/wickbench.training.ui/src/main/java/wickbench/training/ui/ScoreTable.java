package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.training.ReaderScore;
import wickbench.training.ReaderScore.Topic;
import wickbench.training.Round;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.RowSource;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** What a row of the scores says: how one reader did, each share with its exact limits. */
final class ScoreTable {
    private ScoreTable() {}

    static TableSpec<ReaderScore> of(Round round, TrainingDoors.Known site) {
        List<Column<ReaderScore>> columns = List.of(
                Column.of(
                        "reader", TrainingUiWords.get("scores.column.reader"), 110, score -> site.name(score.reader())),
                Column.marked("result", TrainingUiWords.get("scores.column.result"), 190, ScoreTable::mark),
                Column.of(
                        "seen",
                        TrainingUiWords.get("scores.column.seen"),
                        90,
                        score -> TrainingUiWords.get(
                                round.seen().contains(score.reader()) ? "signed.yes" : "scores.unseen")),
                share("near", Topic.NEAR),
                share("clear", Topic.CLEAR),
                share("without", Topic.WITHOUT),
                share("invalid", Topic.INVALID),
                Column.<ReaderScore>of(
                                "window",
                                TrainingUiWords.get("scores.column.window"),
                                90,
                                score -> TrainingUiWords.get("of", score.inside(), score.called()))
                        .rightAligned(),
                number("kappa", score -> score.kappa()),
                number("ac1", score -> score.ac1()),
                number("d", score -> score.dPrime()));
        return new TableSpec<>(
                "training.scores",
                TrainingUiWords.get("scores.heading"),
                columns,
                RowSource.of(round.scores(), columns),
                Optional.empty(),
                TrainingUiWords.get("scores.heading"));
    }

    private static Mark mark(ReaderScore score) {
        return score.passed()
                ? new Mark(TrainingUiWords.get("score.passed"), Shape.RING, Meaning.CALM)
                : new Mark(
                        TrainingUiWords.get(
                                "score.failed",
                                score.failures().stream()
                                        .map(failure -> TrainingUiWords.get(
                                                "failure." + failure.topic().code(),
                                                failure.wrong(),
                                                failure.allowed()))
                                        .collect(Collectors.joining(", "))),
                        Shape.CROSS,
                        Meaning.ALARM);
    }

    private static Column<ReaderScore> share(String id, Topic topic) {
        return Column.<ReaderScore>of(
                        id,
                        TrainingUiWords.get("scores.column." + id),
                        150,
                        score -> score.of(topic)
                                .map(tally -> TrainingUiWords.get(
                                        "scores.share",
                                        tally.right(),
                                        tally.of(),
                                        Math.round(100 * tally.share().lower()),
                                        Math.round(100 * tally.share().upper())))
                                .orElse(""))
                .rightAligned();
    }

    private static Column<ReaderScore> number(
            String id, java.util.function.Function<ReaderScore, Optional<Double>> of) {
        return Column.<ReaderScore>of(
                        id, TrainingUiWords.get("scores.column." + id), 70, score -> Percent.plain(of.apply(score)))
                .rightAligned();
    }
}
