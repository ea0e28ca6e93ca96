package wickbench.widgets;

import java.util.List;
import org.eclipse.swt.widgets.TableItem;

/** How a row looks in a native table. */
record RowFace<T>(Theme theme, List<Column<T>> columns) {

    void put(TableItem item, T row) {
        for (int i = 0; i < columns.size(); i++) {
            int at = i;
            item.setText(at, columns.get(at).text().apply(row));
            columns.get(at).mark().apply(row).ifPresent(mark -> {
                item.setImage(at, theme.image(mark.shape(), mark.meaning()));
                item.setForeground(at, theme.color(theme.tone(mark.meaning()).ink()));
            });
        }
    }
}
