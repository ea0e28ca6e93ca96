package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;

/** The menu of a table: sort, columns, copy, export, reset; made anew each time it opens. */
final class TableMenu<T> {
    private final TableKit<T> kit;
    private final TableColumns<T> columns;

    TableMenu(TableKit<T> kit, TableColumns<T> columns) {
        this.kit = kit;
        this.columns = columns;
    }

    Menu on(Table table) {
        Menu menu = new Menu(table);
        menu.addListener(SWT.Show, event -> fill(menu));
        table.setMenu(menu);
        return menu;
    }

    private void fill(Menu menu) {
        for (MenuItem item : menu.getItems()) {
            item.dispose();
        }
        item(menu, SWT.PUSH, "table.copy", kit::copy).setEnabled(!kit.selected().isEmpty());
        item(menu, SWT.PUSH, "table.export", kit::export);
        new MenuItem(menu, SWT.SEPARATOR);
        sortItems(sub(menu, "table.sort"));
        columnItems(sub(menu, "table.columns"));
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, SWT.PUSH, "table.reset", kit::resetLayout);
    }

    private void sortItems(Menu menu) {
        String now = columns.layout().sort().map(Sort::column).orElse("");
        for (Column<T> column : columns.shown()) {
            MenuItem item = new MenuItem(menu, SWT.RADIO);
            item.setText(column.title());
            item.setEnabled(column.sortable());
            item.setSelection(column.id().equals(now));
            item.addListener(SWT.Selection, event -> when(item.getSelection(), () -> kit.sortBy(column.id())));
        }
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, SWT.PUSH, "table.sort-reverse", () -> kit.sortBy(now)).setEnabled(!now.isEmpty());
    }

    private void columnItems(Menu menu) {
        for (Column<T> column : columns.all()) {
            MenuItem item = new MenuItem(menu, SWT.CHECK);
            item.setText(column.title());
            item.setSelection(!columns.layout().hidden().contains(column.id()));
            item.addListener(SWT.Selection, event -> kit.toggleColumn(column.id()));
        }
    }

    private static Menu sub(Menu menu, String key) {
        MenuItem item = new MenuItem(menu, SWT.CASCADE);
        item.setText(WidgetWords.get(key));
        Menu sub = new Menu(menu);
        item.setMenu(sub);
        return sub;
    }

    private static MenuItem item(Menu menu, int style, String key, Runnable act) {
        MenuItem item = new MenuItem(menu, style);
        item.setText(WidgetWords.get(key));
        item.addListener(SWT.Selection, event -> act.run());
        return item;
    }

    private static void when(boolean condition, Runnable act) {
        if (condition) {
            act.run();
        }
    }
}
