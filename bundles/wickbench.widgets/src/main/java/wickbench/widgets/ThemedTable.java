package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

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
        table.addListener(SWT.EraseItem, event -> selection(event, theme));
        Names.give(table, () -> name);
        return Fit.grow(table);
    }

    /** Paints selected rows in the theme's own colour, on which marks can still be read; the system's would hide them. */
    private static void selection(Event event, Theme theme) {
        if ((event.detail & SWT.SELECTED) != 0) {
            event.gc.setBackground(theme.color(theme.palette().selection()));
            event.gc.fillRectangle(event.x, event.y, event.width, event.height);
            event.detail &= ~(SWT.SELECTED | SWT.HOT | SWT.BACKGROUND);
            TableItem item = (TableItem) event.item;
            Image image = item.getImage(event.index);
            if (image != null) {
                Rectangle at = item.getImageBounds(event.index);
                event.gc.drawImage(image, at.x, at.y);
            }
        }
    }
}
