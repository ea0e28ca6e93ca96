package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import wickbench.widgets.TableKit;

/** Finds the columns of a table that stand half in sight, or whose words need more room than they have. */
final class CutColumns {
    private CutColumns() {}

    static List<String> in(Table table) {
        List<String> found = new ArrayList<>();
        int room = table.getClientArea().width;
        int left = 0;
        for (int at : table.getColumnOrder()) {
            TableColumn column = table.getColumn(at);
            int width = column.getWidth();
            boolean words = width > 0 && !column.getText().isEmpty();
            boolean half = left < room && left + width > room;
            // a table may have one column only, wider than itself
            if (words && left < room && (half && left > 0 || needs(column) > width && !TableKit.shortens(table, at))) {
                found.add(column.getText());
            }
            left += width;
        }
        return found;
    }

    private static int needs(TableColumn column) {
        int before = column.getWidth();
        column.pack();
        int needed = column.getWidth();
        column.setWidth(before);
        return needed;
    }
}
