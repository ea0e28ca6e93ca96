package wickbench.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Goes from cell to cell of the selected row, by the keys left and right or the pointer; the cell in hand has a frame. */
final class CellCursor<T> {
    private final Table table;
    private final Theme theme;
    private final TableColumns<T> columns;
    private final List<Consumer<String>> listeners = new ArrayList<>();
    private String column;

    CellCursor(Table table, Theme theme, TableColumns<T> columns) {
        this.table = table;
        this.theme = theme;
        this.columns = columns;
        column = columns.shown().get(0).id();
        table.addListener(SWT.KeyDown, this::key);
        table.addListener(SWT.MouseDown, this::click);
        table.addListener(SWT.PaintItem, this::frame);
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = says();
            }
        });
    }

    /** Hears the id of the column that the cell in hand is in. */
    void onChange(Consumer<String> listener) {
        listeners.add(listener);
    }

    /** Takes the cell of another column in hand; nobody hears of it. */
    void show(String id) {
        column = id;
        table.redraw();
    }

    private void key(Event event) {
        boolean plain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
        if (plain && (event.keyCode == SWT.ARROW_LEFT || event.keyCode == SWT.ARROW_RIGHT)) {
            event.doit = false;
            List<String> ids = columns.shown().stream().map(Column::id).toList();
            int next = ids.indexOf(column) + (event.keyCode == SWT.ARROW_RIGHT ? 1 : -1);
            go(ids.get(Math.max(0, Math.min(ids.size() - 1, next))));
        }
    }

    private void click(Event event) {
        TableItem item = table.getItem(new Point(event.x, event.y));
        if (item != null) {
            columns.shown().stream()
                    .filter(each -> item.getBounds(place(each.id())).contains(event.x, event.y))
                    .findFirst()
                    .ifPresent(each -> go(each.id()));
        }
    }

    private void go(String next) {
        if (!next.equals(column)) {
            show(next);
            table.showColumn(table.getColumn(place(next)));
            listeners.forEach(listener -> listener.accept(next));
        }
    }

    private int place(String id) {
        return columns.all().stream().map(Column::id).toList().indexOf(id);
    }

    private void frame(Event event) {
        TableItem item = (TableItem) event.item;
        if (event.index == place(column) && table.isSelected(table.indexOf(item))) {
            Rectangle cell = item.getBounds(event.index);
            event.gc.setForeground(theme.color(theme.palette().accent()));
            event.gc.setLineWidth(theme.px(2));
            event.gc.drawRectangle(cell.x + 1, cell.y + 1, cell.width - 3, cell.height - 3);
            event.gc.setLineWidth(1);
        }
    }

    private String says() {
        TableItem[] selected = table.getSelection();
        return selected.length == 0
                ? ""
                : WidgetWords.get(
                        "table.cell", table.getColumn(place(column)).getText(), selected[0].getText(place(column)));
    }
}
