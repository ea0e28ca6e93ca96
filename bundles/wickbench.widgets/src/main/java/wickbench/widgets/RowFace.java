package wickbench.widgets;

import java.util.List;
import org.eclipse.swt.widgets.TableItem;

/** How a row looks in a native table. */
record RowFace<T>(Theme theme, List<Column<T>> columns) {

    void put(TableItem item, T row) {
        // GTK gives all images of a table the size of the first, so a row is made high by one kind of image only
        if (columns.stream().allMatch(column -> column.mark().isEmpty())) {
            item.setImage(0, theme.spacer());
        }
        for (int i = 0; i < columns.size(); i++) {
            put(item, i, row);
        }
    }

    private void put(TableItem item, int at, T row) {
        item.setText(at, columns.get(at).text().apply(row));
        columns.get(at).bar().ifPresent(bar -> item.setData(CellBars.key(at), bar.apply(row)));
        columns.get(at).mark().ifPresent(marks -> {
            Mark mark = marks.apply(row);
            item.setImage(at, theme.image(mark.shape(), mark.meaning()));
            item.setForeground(at, theme.color(theme.tone(mark.meaning()).ink()));
        });
    }
}
