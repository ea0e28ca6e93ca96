package wickbench.plant.ui;

import java.util.List;
import wickbench.api.reading.Outcome;
import wickbench.plant.PointLook;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** How points are marked by their latest outcome, as results are everywhere; one never tested has a mark of its own. */
final class PointMarks {
    private PointMarks() {}

    static Mark of(PointLook look) {
        return look.latest()
                .map(latest -> latest.doubted() ? doubted() : Mark.of(latest.outcome()))
                .orElseGet(PointMarks::never);
    }

    /** A Negative that is in doubt is no Negative until somebody has decided. */
    static Mark doubted() {
        return new Mark(PlantUiWords.get("picture.doubted"), Shape.TRIANGLE, Meaning.CAUTION);
    }

    static Mark never() {
        return new Mark(PlantUiWords.get("picture.never"), Shape.DIAMOND, Meaning.NEUTRAL);
    }

    /** Returns every mark there is, for the legend. */
    static List<Mark> all() {
        return List.of(
                Mark.of(Outcome.NEGATIVE),
                Mark.of(Outcome.POSITIVE),
                Mark.of(Outcome.POSITIVE_ABOVE_RANGE),
                Mark.of(Outcome.INVALID),
                doubted(),
                never());
    }
}
