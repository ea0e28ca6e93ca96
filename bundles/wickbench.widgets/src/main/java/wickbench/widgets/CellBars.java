package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Paints the bars of a table's cells, in the right half of each; the words have the left one. */
final class CellBars {
    private static final int HEIGHT = 6;
    private static final int INSET = 6;

    private CellBars() {}

    /** Returns under which name a row keeps the bar of a column. */
    static String key(int column) {
        return "bar." + column;
    }

    static void paint(Table table, Theme theme) {
        table.addListener(SWT.PaintItem, event -> paint(event, theme));
    }

    private static void paint(Event event, Theme theme) {
        TableItem item = (TableItem) event.item;
        if (item.getData(key(event.index)) instanceof Bar bar) {
            Rectangle cell = item.getBounds(event.index);
            int inset = theme.px(INSET);
            int height = theme.px(HEIGHT);
            int whole = Math.max(0, cell.width / 2 - inset);
            int x = cell.x + cell.width - inset - whole;
            int y = cell.y + (cell.height - height) / 2;
            event.gc.setBackground(theme.color(theme.palette().edge()));
            event.gc.fillRectangle(x, y, whole, height);
            int filled = (int) Math.round(whole * bar.share());
            MeaningBar.paint(event.gc, theme, bar.meaning(), new Rectangle(x, y, filled, height));
        }
    }
}
