package wickbench.widgets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** The native columns of a table, kept in step with its layout both ways; the layout is remembered on each change. */
final class TableColumns<T> {
    /** Movement of a column comes as many events; one change is kept when they are over. */
    private static final int SETTLE_MILLIS = 250;

    private final Table table;
    private final Desk desk;
    private final TableSpec<T> spec;
    private final Map<String, TableColumn> natives = new LinkedHashMap<>();
    private final TableColumn filler;
    private final Runnable settle = this::keepWhatIsSeen;
    private final Runnable sortChanged;
    private TableLayout layout;
    private boolean applying;

    TableColumns(Table table, Desk desk, TableSpec<T> spec, Runnable sortChanged) {
        this.table = table;
        this.desk = desk;
        this.spec = spec;
        this.sortChanged = sortChanged;
        this.layout =
                desk.memory().recall(key()).map(TableLayout.first(spec)::with).orElse(TableLayout.first(spec));
        spec.columns().forEach(column -> natives.put(column.id(), make(column)));
        filler = new TableColumn(table, SWT.NONE); // takes the room that GTK would give to the last column
        filler.setResizable(false);
        apply();
    }

    TableLayout layout() {
        return layout;
    }

    /** Returns the columns shown, from left to right. */
    List<Column<T>> shown() {
        return layout.order().stream()
                .filter(id -> !layout.hidden().contains(id))
                .map(this::column)
                .toList();
    }

    /** Returns all columns as they were declared. */
    List<Column<T>> all() {
        return spec.columns();
    }

    void sortBy(String id) {
        Optional<Sort> now = layout.sort().filter(sort -> sort.column().equals(id));
        lay(layout.sortedBy(Optional.of(now.map(Sort::reversed).orElse(new Sort(id, true)))));
        sortChanged.run();
    }

    void toggle(String id) {
        lay(layout.toggled(id));
    }

    /** Goes back to the first layout. */
    void reset() {
        layout = TableLayout.first(spec);
        desk.memory().forget(key());
        apply();
        sortChanged.run();
    }

    private void lay(TableLayout next) {
        layout = next;
        desk.memory().keep(key(), layout.toJson());
        apply();
    }

    private TableColumn make(Column<T> column) {
        TableColumn made = new TableColumn(table, column.right() ? SWT.RIGHT : SWT.LEFT);
        made.setText(column.title());
        made.setMoveable(true);
        made.setToolTipText(column.title());
        made.setImage(desk.theme().headSpacer());
        if (column.sortable()) {
            made.addListener(SWT.Selection, event -> sortBy(column.id()));
        }
        made.addListener(SWT.Resize, event -> changedByHand());
        made.addListener(SWT.Move, event -> changedByHand());
        return made;
    }

    private void apply() {
        applying = true;
        natives.forEach((id, column) -> {
            boolean hidden = layout.hidden().contains(id);
            column.setResizable(!hidden);
            column.setWidth(hidden ? 0 : desk.theme().px(layout.widths().get(id)));
        });
        int[] order = new int[natives.size() + 1];
        for (int i = 0; i < layout.order().size(); i++) {
            order[i] = table.indexOf(natives.get(layout.order().get(i)));
        }
        order[natives.size()] = table.indexOf(filler);
        table.setColumnOrder(order);
        table.setSortColumn(
                layout.sort().map(sort -> natives.get(sort.column())).orElse(null));
        table.setSortDirection(
                layout.sort().map(sort -> sort.ascending() ? SWT.UP : SWT.DOWN).orElse(SWT.NONE));
        applying = false;
    }

    private void changedByHand() {
        if (!applying && !table.isDisposed()) {
            table.getDisplay().timerExec(SETTLE_MILLIS, settle);
        }
    }

    private void keepWhatIsSeen() {
        if (table.isDisposed()) {
            return;
        }
        List<String> ids = new ArrayList<>(natives.keySet());
        List<String> order = Arrays.stream(table.getColumnOrder())
                .filter(i -> i < ids.size())
                .mapToObj(ids::get)
                .toList();
        Map<String, Integer> widths = new LinkedHashMap<>(layout.widths());
        natives.forEach((id, column) -> {
            if (!layout.hidden().contains(id)
                    && column.getWidth() != desk.theme().px(layout.widths().get(id))) {
                widths.put(
                        id,
                        Math.round(column.getWidth()
                                * 100f
                                / desk.theme().metrics().percent()));
            }
        });
        TableLayout seen = new TableLayout(order, widths, layout.hidden(), layout.sort());
        if (!seen.equals(layout)) {
            lay(seen);
        }
    }

    private Column<T> column(String id) {
        return spec.columns().stream()
                .filter(column -> column.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private String key() {
        return "table." + spec.id();
    }
}
