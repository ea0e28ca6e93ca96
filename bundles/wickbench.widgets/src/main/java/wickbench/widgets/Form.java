package wickbench.widgets;

import java.util.List;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Labelled fields, one below the other, each with room for what is wrong with it. */
public final class Form {
    private final Theme theme;
    private final Composite grid;

    public Form(Composite parent, Theme theme) {
        this.theme = theme;
        this.grid = Fit.wide(theme.controls().box(parent, 2));
    }

    /** Returns the grid of the fields: two columns, label and field. */
    public Composite grid() {
        return grid;
    }

    public Field<Text> text(String label) {
        return field(label, theme.controls()::field);
    }

    public Field<Combo> choice(String label, List<String> choices) {
        return field(label, parent -> theme.controls().choice(parent, choices));
    }

    /** Adds any control with a label before it and a complaint line below it. */
    public <C extends Control> Field<C> field(String label, Function<Composite, C> make) {
        Label words = theme.controls().label(grid, Type.BODY, label);
        C control = Fit.wide(make.apply(grid));
        words.setLayoutData(beside(control));
        Label beside = aside(false);
        return new Field<>(theme, words, control, beside, aside(true));
    }

    /** Puts a label half way down its field, but at the first line of one of several. */
    private GridData beside(Control control) {
        boolean lines = control instanceof Text && (control.getStyle() & SWT.MULTI) != 0;
        GridData data = new GridData(SWT.LEFT, lines ? SWT.BEGINNING : SWT.CENTER, false, false);
        data.verticalIndent = lines ? theme.metrics().grid(1) : 0;
        return data;
    }

    /** Makes a line of small words that takes no room until it says something. */
    private Label aside(boolean wide) {
        Label label = theme.controls().text(grid, Type.SMALL, "");
        GridData data = new GridData(SWT.FILL, SWT.CENTER, wide, false);
        data.exclude = true;
        label.setLayoutData(data);
        label.setVisible(false);
        return label;
    }
}
