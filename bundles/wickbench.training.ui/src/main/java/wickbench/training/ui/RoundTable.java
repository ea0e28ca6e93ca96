package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.training.ReaderScore;
import wickbench.training.Round;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.RowSource;
import wickbench.widgets.Shape;
import wickbench.widgets.Sort;
import wickbench.widgets.TableSpec;

/** What a row of the rounds says. */
final class RoundTable {
    private RoundTable() {}

    static TableSpec<Round> of(List<Round> rounds, TrainingDoors.Known site) {
        List<Column<Round>> columns = List.of(
                column("id", 120, Round::id),
                Column.marked("state", TrainingUiWords.get("rounds.column.state"), 130, RoundTable::mark),
                column("opened", 140, round -> Times.minute(round.opened(), site.zone())),
                column("method", 160, round -> round.plan().method().value()),
                column("strips", 70, round -> String.valueOf(round.codes().size()))
                        .rightAligned(),
                column(
                        "missing",
                        170,
                        round -> round.state() == Round.State.OPEN
                                ? round.missing().stream().map(site::name).collect(Collectors.joining(", "))
                                : ""),
                column("passed", 90, RoundTable::passed));
        return new TableSpec<>(
                "training.rounds",
                TrainingUiWords.get("rounds.held"),
                columns,
                RowSource.of(rounds, columns),
                Optional.of(new Sort("opened", false)),
                TrainingUiWords.get("rounds.none"));
    }

    /** Returns how far a round is: word, shape, colour. */
    static Mark mark(Round round) {
        String word = TrainingUiWords.get("round." + round.state().code());
        return switch (round.state()) {
            case OPEN -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
            case CLOSED -> new Mark(word, Shape.DIAMOND, Meaning.CAUTION);
            case SCORED -> new Mark(word, Shape.DISC, Meaning.CALM);
        };
    }

    private static String passed(Round round) {
        long passed = round.scores().stream().filter(ReaderScore::passed).count();
        return round.state() == Round.State.SCORED
                ? TrainingUiWords.get("of", passed, round.scores().size())
                : "";
    }

    private static Column<Round> column(String id, int width, java.util.function.Function<Round, String> text) {
        return Column.of(id, TrainingUiWords.get("rounds.column." + id), width, text);
    }
}
