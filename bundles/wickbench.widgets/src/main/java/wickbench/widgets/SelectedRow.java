package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.TreeItem;

/** Paints selected rows in the theme's own colour, on which marks can still be read; the system's would hide them. */
final class SelectedRow {
    private SelectedRow() {}

    /** Paints those of a table or a tree. */
    static void paintIn(Composite rows, Theme theme) {
        rows.addListener(SWT.EraseItem, event -> paint(event, theme));
    }

    private static void paint(Event event, Theme theme) {
        if ((event.detail & SWT.SELECTED) != 0) {
            event.gc.setBackground(theme.color(theme.palette().selection()));
            event.gc.fillRectangle(event.x, event.y, event.width, event.height);
            event.detail &= ~(SWT.SELECTED | SWT.HOT | SWT.BACKGROUND);
            if (event.item instanceof TableItem item) {
                again(event, item.getImage(event.index), item.getImageBounds(event.index));
            } else if (event.item instanceof TreeItem item) {
                again(event, item.getImage(event.index), item.getImageBounds(event.index));
            }
        }
    }

    /** What was painted over is painted again. */
    private static void again(Event event, Image image, Rectangle at) {
        if (image != null) {
            event.gc.drawImage(image, at.x, at.y);
        }
    }
}
