package wickbench.bench.ui;

import java.util.EnumSet;
import java.util.Set;

/** Which strip comes next, and so what does not stay on the form. */
enum NextStrip {
    /** The next sample of the run: person, method and lot stay. */
    OTHER_SAMPLE(EnumSet.complementOf(EnumSet.of(Item.OPERATOR, Item.METHOD, Item.LOT))),
    /** A repeat or dilution from the same extract: all stays but the strip's own times. */
    SAME_SAMPLE(EnumSet.of(Item.STARTED, Item.READ));

    private final Set<Item> cleared;

    NextStrip(Set<Item> cleared) {
        this.cleared = cleared;
    }

    Set<Item> cleared() {
        return cleared;
    }
}
