package wickbench.figures.ui;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import wickbench.api.json.Json;
import wickbench.figures.sums.Sum;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;

/** A table of an answer, to be read and copied (Ctrl+C copies all of it). */
final class RowsTable {
    private static final int MOST = 1000;
    private static final int TALLEST = 230;

    private RowsTable() {}

    static void show(Composite parent, Theme theme, Sum sum, String name, Json.Arr array) {
        List<Json.Obj> rows = array.items().stream().map(Json.Obj.class::cast).toList();
        List<String> members = List.copyOf(rows.get(0).members().keySet());
        Table table = ThemedTable.headed(parent, theme, SWT.MULTI, () -> sum.name(name));
        members.forEach(member -> new TableColumn(table, SWT.NONE).setText(sum.name(member)));
        rows.stream().limit(MOST).forEach(row -> {
            TableItem item = new TableItem(table, SWT.NONE);
            for (int i = 0; i < members.size(); i++) {
                item.setText(i, row.get(members.get(i)).map(AnswerView::plain).orElse("–"));
            }
        });
        pack(table);
        // what a column needs is told in full only once it is on the screen
        table.getDisplay().asyncExec(() -> pack(table));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.heightHint = Math.min(theme.px(TALLEST), table.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        data.widthHint = theme.px(TALLEST);
        table.setLayoutData(data);
        table.addListener(SWT.KeyDown, event -> copy(event, theme, members, rows));
        if (rows.size() > MOST) {
            theme.controls().quiet(parent, FiguresUiWords.get("answer.first-rows", MOST, rows.size()));
        }
    }

    private static void pack(Table table) {
        if (!table.isDisposed()) {
            for (TableColumn column : table.getColumns()) {
                column.pack();
            }
        }
    }

    private static void copy(Event event, Theme theme, List<String> members, List<Json.Obj> rows) {
        if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'c') {
            String text = rows.stream()
                    .map(row -> members.stream()
                            .map(member ->
                                    row.get(member).map(AnswerView::plain).orElse(""))
                            .collect(Collectors.joining("\t")))
                    .collect(Collectors.joining("\n"));
            CellTable.copy(theme, String.join("\t", members) + "\n" + text);
        }
    }
}
