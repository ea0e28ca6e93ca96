package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;

/** Makes a native table in the colours of a theme. */
final class ThemedTable {
    private ThemedTable() {}

    static Table make(Composite parent, Theme theme, String name) {
        Table table = new Table(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
        table.setHeaderVisible(true);
        table.setFont(theme.font(Type.BODY));
        table.setBackground(theme.color(theme.palette().surface()));
        table.setForeground(theme.color(theme.palette().ink()));
        table.setHeaderBackground(theme.color(theme.palette().stripe()));
        table.setHeaderForeground(theme.color(theme.palette().quiet()));
        Names.give(table, () -> name);
        return Fit.grow(table);
    }
}
