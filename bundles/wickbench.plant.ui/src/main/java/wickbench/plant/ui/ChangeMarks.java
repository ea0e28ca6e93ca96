package wickbench.plant.ui;

import wickbench.plant.changeover.Changeover;
import wickbench.plant.terms.ChangeWords;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** How a change is marked: what must not be made stands out by word, shape and colour. */
final class ChangeMarks {
    private ChangeMarks() {}

    static Mark of(Changeover change) {
        String word = ChangeWords.cell(change);
        if (change.from().id().equals(change.to().id())) {
            return new Mark(word, Shape.BAR, Meaning.NEUTRAL);
        }
        if (!change.allowed()) {
            return new Mark(word, Shape.CROSS, Meaning.ALARM);
        }
        return change.tested()
                ? new Mark(word, Shape.SQUARE, Meaning.NOTICE)
                : new Mark(word, Shape.RING, Meaning.CALM);
    }
}
