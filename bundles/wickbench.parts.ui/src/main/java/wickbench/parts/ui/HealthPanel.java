package wickbench.parts.ui;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.part.Health;
import wickbench.shell.PageContext;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** How the program itself is: one line for each thing that was looked at, what is not well first. */
final class HealthPanel {
    private final PageContext context;
    private final Composite parent;

    HealthPanel(Composite parent, PageContext context) {
        this.parent = parent;
        this.context = context;
    }

    /** @param again looks once more */
    void fill(List<Health> all, Runnable again) {
        Composite card = Fit.wide(context.theme().controls().card(parent, 1));
        long amiss =
                all.stream().filter(each -> each.state() != Health.State.WELL).count();
        Composite head = Fit.wide(context.theme().controls().box(card, 2));
        Composite words = Fit.wide(context.theme().controls().box(head, 1));
        context.theme().controls().label(words, Type.HEADING, PartsUiWords.get("health.title"));
        Label line = context.theme()
                .controls()
                .text(
                        words,
                        Type.BODY,
                        amiss == 0 ? PartsUiWords.get("health.well") : PartsUiWords.get("health.amiss"));
        line.setForeground(context.theme().color(context.theme().palette().quiet()));
        Fit.right(context.theme().controls().button(head, PartsUiWords.get("health.again"), again));
        Composite grid = Fit.wide(context.theme().controls().box(card, 3));
        GridLayout layout = (GridLayout) grid.getLayout();
        layout.horizontalSpacing = context.theme().metrics().grid(2);
        layout.verticalSpacing = context.theme().px(2);
        all.stream()
                .sorted(java.util.Comparator.comparing(Health::state).reversed())
                .forEach(each -> line(grid, each));
    }

    private void line(Composite grid, Health health) {
        Badge badge = new Badge(grid, context.theme(), Type.BODY, mark(health.state()));
        badge.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        Label of = context.theme()
                .controls()
                .label(
                        grid,
                        Type.STRONG,
                        PartsUiWords.get("health.of." + health.of().code()));
        of.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        context.theme().controls().text(grid, Type.BODY, health.text());
    }

    static Mark mark(Health.State state) {
        String word = PartsUiWords.get("health.state." + state.code());
        return switch (state) {
            case WELL -> new Mark(word, Shape.RING, Meaning.CALM);
            case MINDED -> new Mark(word, Shape.DIAMOND, Meaning.CAUTION);
            case UNWELL -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
        };
    }
}
