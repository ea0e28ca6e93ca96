package wickbench.plant.ui;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.plant.day.Demands;
import wickbench.plant.day.Demands.Names;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What is asked of the order of a day: fixed places, one before another, how long each is made, and by when it is finished. */
final class DemandFields {
    private static final int COLUMNS = 4;

    private final Composite grid;
    private final Text places;
    private final Text before;
    private final Text runs;
    private final Text due;

    /** @param enter told when somebody presses Enter in one of them */
    DemandFields(Composite parent, Theme theme, Runnable enter) {
        grid = Fit.wide(theme.controls().box(parent, COLUMNS));
        places = field(theme.controls(), "order.at", "order.at-example", enter);
        before = field(theme.controls(), "order.before", "order.before-example", enter);
        runs = field(theme.controls(), "order.runs", "order.runs-example", enter);
        due = field(theme.controls(), "order.due", "order.due-example", enter);
    }

    private Text field(Controls controls, String key, String example, Runnable enter) {
        Label label = controls.label(grid, Type.BODY, PlantUiWords.get(key));
        label.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
        Text field = Fit.wide(wickbench.widgets.Names.give(controls.field(grid), label::getText));
        field.setMessage(PlantUiWords.get(example));
        field.addListener(SWT.DefaultSelection, event -> enter.run());
        return field;
    }

    Demands.Typed typed() {
        return new Demands.Typed(pairs(places), pairs(runs), pairs(due), pairs(before));
    }

    /** Returns what each is called, as it stands before its field. */
    static Names names() {
        return new Names(
                PlantUiWords.get("order.at"),
                PlantUiWords.get("order.runs"),
                PlantUiWords.get("order.due"),
                PlantUiWords.get("order.before"));
    }

    private static List<String> pairs(Text field) {
        return Arrays.stream(field.getText().split(","))
                .map(String::strip)
                .filter(pair -> !pair.isEmpty())
                .toList();
    }

    /** Asks for nothing any more, as of another line. */
    void clear() {
        List.of(places, before, runs, due).forEach(field -> field.setText(""));
    }
}
