package wickbench.bench.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Theme;
import wickbench.widgets.Wide;

/** The buttons for what may be done about the chosen line of what is owed. */
final class OwedButtons {
    private final OwedTable owed;
    private final OwedActs acts;
    private final Button clean;
    private final Button neighbours;
    private final Button decide;

    OwedButtons(Composite bar, Theme theme, OwedTable owed, OwedActs acts) {
        this.owed = owed;
        this.acts = acts;
        clean = button(bar, theme, "owed.clean", this::clean);
        neighbours = button(bar, theme, "owed.name", this::neighbours);
        decide = button(bar, theme, "owed.settle", this::decide);
    }

    private static Button button(Composite bar, Theme theme, String word, Runnable act) {
        return Wide.button(theme.controls().button(bar, FlowWords.get(word), act), theme);
    }

    /** Only what may be done about what is chosen can be pressed. */
    void enable() {
        Optional<OwedDue> chosen = owed.chosen();
        clean.setEnabled(chosen.filter(OwedActs::cleanable).isPresent());
        neighbours.setEnabled(chosen.filter(OwedActs::hasNeighbours).isPresent());
        decide.setEnabled(chosen.isPresent());
    }

    void clean() {
        owed.chosen().filter(OwedActs::cleanable).ifPresent(acts::clean);
    }

    void neighbours() {
        owed.chosen().filter(OwedActs::hasNeighbours).ifPresent(acts::neighbours);
    }

    void decide() {
        owed.chosen().ifPresent(acts::settle);
    }
}
