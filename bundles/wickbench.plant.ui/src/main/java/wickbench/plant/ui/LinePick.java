package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import wickbench.plant.PlantState;
import wickbench.plant.site.Line;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Names;
import wickbench.widgets.Type;

/** The line that a tab speaks of. */
final class LinePick {
    private final Combo combo;
    private List<Line> lines = List.of();

    LinePick(Composite parent, PageContext context, Consumer<Line> chosen) {
        Controls controls = context.theme().controls();
        controls.label(parent, Type.BODY, PlantUiWords.get("line.ask"));
        combo = Names.give(controls.choice(parent, List.of()), () -> PlantUiWords.get("line.ask"));
        combo.addListener(SWT.Selection, event -> line().ifPresent(chosen));
    }

    /** Offers the lines; the one that was chosen stays, else the first that makes several products. */
    void offer(PlantState plant) {
        Optional<String> before = line().map(Line::id);
        lines = plant.lines();
        combo.setItems(lines.stream()
                .map(line -> PlantUiWords.get("line.item", line.id(), line.name()))
                .toArray(String[]::new));
        before.ifPresentOrElse(
                this::choose,
                () -> lines.stream()
                        .filter(line -> plant.productsOf(line.id()).size() > 1)
                        .findFirst()
                        .ifPresent(line -> choose(line.id())));
    }

    void choose(String id) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).id().equals(id)) {
                combo.select(i);
            }
        }
    }

    Optional<Line> line() {
        int at = combo.getSelectionIndex();
        return at < 0 || at >= lines.size() ? Optional.empty() : Optional.of(lines.get(at));
    }

    void focus() {
        combo.setFocus();
    }
}
