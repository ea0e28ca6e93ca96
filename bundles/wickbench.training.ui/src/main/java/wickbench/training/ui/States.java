package wickbench.training.ui;

import java.time.LocalDate;
import java.util.Optional;
import wickbench.training.Competence;
import wickbench.training.Matrix;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** How a competence is marked: word, shape and colour. */
final class States {
    private States() {}

    static Mark of(Matrix matrix, Optional<Competence> cell) {
        return cell.map(each -> of(matrix, each))
                .orElseGet(() -> new Mark(TrainingUiWords.get("state.never"), Shape.BAR, Meaning.NEUTRAL));
    }

    static Mark of(Matrix matrix, Competence cell) {
        String until = cell.holdsUntil().map(LocalDate::toString).orElse("");
        return switch (cell.state()) {
            case AUTHORISED ->
                matrix.dueSoon(cell)
                        ? new Mark(TrainingUiWords.get("state.due-soon", until), Shape.SQUARE, Meaning.NOTICE)
                        : new Mark(TrainingUiWords.get("state.authorised", until), Shape.RING, Meaning.CALM);
            case UNREAD -> new Mark(TrainingUiWords.get("state.unread"), Shape.DIAMOND, Meaning.CAUTION);
            case LAPSED -> new Mark(TrainingUiWords.get("state.lapsed"), Shape.CROSS, Meaning.CAUTION);
            case NEVER -> new Mark(TrainingUiWords.get("state.never"), Shape.BAR, Meaning.NEUTRAL);
            case SUSPENDED -> new Mark(TrainingUiWords.get("state.suspended"), Shape.TRIANGLE, Meaning.ALARM);
        };
    }
}
