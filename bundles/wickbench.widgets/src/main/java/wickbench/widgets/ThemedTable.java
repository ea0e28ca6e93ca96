package wickbench.widgets;

import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;

/** Makes native tables in the colours of a theme; a {@link TableKit} is for those that are searched, sorted and scrolled far. */
public final class ThemedTable {
    private ThemedTable() {}

    /**
     * Makes rows without a head, on the ground of a card.
     *
     * @param style a style of {@link Table}; whole rows are selected in any case
     * @param name what screen readers say
     */
    public static Table plain(Composite parent, Theme theme, int style, Supplier<String> name) {
        return make(parent, theme, style, theme.palette().surface(), name);
    }

    /** Makes rows below a head, with a frame. */
    public static Table headed(Composite parent, Theme theme, int style, Supplier<String> name) {
        return head(make(parent, theme, style | SWT.BORDER, theme.palette().surface(), name), theme);
    }

    /** Makes rows below a head, whose cells are typed in. */
    public static Table cells(Composite parent, Theme theme, Supplier<String> name) {
        Table table =
                make(parent, theme, SWT.SINGLE | SWT.BORDER, theme.palette().field(), name);
        table.setLinesVisible(true);
        return head(table, theme);
    }

    private static Table make(Composite parent, Theme theme, int style, RGB ground, Supplier<String> name) {
        Table table = new Table(parent, style | SWT.FULL_SELECTION);
        table.setFont(theme.font(Type.BODY));
        table.setBackground(theme.color(ground));
        table.setForeground(theme.color(theme.palette().ink()));
        SelectedRow.paintIn(table, theme);
        return Names.give(table, name);
    }

    private static Table head(Table table, Theme theme) {
        table.setHeaderVisible(true);
        table.setHeaderBackground(theme.color(theme.palette().stripe()));
        table.setHeaderForeground(theme.color(theme.palette().quiet()));
        return table;
    }
}
