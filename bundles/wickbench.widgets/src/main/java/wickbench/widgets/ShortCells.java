package wickbench.widgets;

import java.util.HashSet;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Paints the cells of columns that hold sentences: what does not fit ends with three dots. */
final class ShortCells {
    private static final String KEY = ShortCells.class.getName();

    private final Theme theme;
    private final Set<Integer> columns = new HashSet<>();

    private ShortCells(Theme theme) {
        this.theme = theme;
    }

    /** Looks after a table; none of its columns is painted so yet. */
    static ShortCells on(Table table, Theme theme) {
        ShortCells cells = new ShortCells(theme);
        table.setData(KEY, cells);
        table.addListener(SWT.EraseItem, cells::keepNativeOff);
        table.addListener(SWT.PaintItem, cells::paint);
        return cells;
    }

    /** Tells whether a column of a table is painted so. */
    static boolean are(Table table, int column) {
        return table.getData(KEY) instanceof ShortCells cells && cells.columns.contains(column);
    }

    /** Says which columns, by index. */
    void are(Set<Integer> these) {
        columns.clear();
        columns.addAll(these);
    }

    private void keepNativeOff(Event event) {
        if (columns.contains(event.index)) {
            event.detail &= ~SWT.FOREGROUND;
        }
    }

    private void paint(Event event) {
        if (columns.contains(event.index)) {
            TableItem item = (TableItem) event.item;
            Rectangle cell = item.getBounds(event.index);
            Rectangle words = item.getTextBounds(event.index);
            int room = cell.x + cell.width - words.x - theme.px(2);
            event.gc.setForeground(item.getForeground(event.index));
            String text = ShortWords.fitting(event.gc, item.getText(event.index), room);
            // rounded up as GTK rounds the others, so that the words of a row stand on one line
            int y = cell.y + (cell.height - event.gc.textExtent(text).y + 1) / 2;
            event.gc.drawText(text, words.x, y, true);
        }
    }
}
