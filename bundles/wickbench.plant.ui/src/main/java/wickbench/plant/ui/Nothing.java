package wickbench.plant.ui;

import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;

/** What stands where no plant is stated yet. */
final class Nothing {
    private Nothing() {}

    static EmptyState yet(Composite parent, PageContext context, String key) {
        return Fit.grow(new EmptyState(
                parent,
                context.theme(),
                pen -> pen.box(2, 6, 5, 9, 1)
                        .box(10, 9, 5, 6, 1)
                        .box(18, 6, 4, 9, 1)
                        .line(7, 12, 10, 12)
                        .line(15, 12, 18, 12)
                        .line(2, 19, 22, 19),
                PlantUiWords.get(key + ".title"),
                PlantUiWords.get(key + ".text")));
    }
}
