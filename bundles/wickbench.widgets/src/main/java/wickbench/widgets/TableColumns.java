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

    /** At 100 %. */
    private static final int NARROWEST = 12;

    private final Table table;
    private final Desk desk;
    private final TableSpec<T> spec;
    private final Map<String, TableColumn> natives = new LinkedHashMap<>();
    private final TableColumn filler;
    private final Runnable settle = this::keepWhatIsSeen;
    private final Runnable sortChanged;
    private final ColumnNeeds needs;
    private final ShortCells sentences;
    private final Map<String, Integer> laid = new LinkedHashMap<>();
    private TableLayout layout;
    private boolean applying;

    TableColumns(Table table, Desk desk, TableSpec<T> spec, Runnable sortChanged) {
        this.table = table;
        this.desk = desk;
        this.spec = spec;
        this.sortChanged = sortChanged;
        this.needs = new ColumnNeeds(desk.theme());
        this.sentences = ShortCells.on(table, desk.theme());
        this.layout =
                desk.memory().recall(key()).map(TableLayout.first(spec)::with).orElse(TableLayout.first(spec));
        spec.columns().forEach(column -> natives.put(column.id(), make(column)));
        filler = new TableColumn(table, SWT.NONE); // takes the room that GTK would give to the last column
        filler.setResizable(false);
        apply();
        table.addListener(SWT.Resize, event -> share());
    }

    TableLayout layout() {
        return layout;
    }

    /** Makes room for the words of the rows that are there now. */
    void fit() {
        applying = true;
        needs.measure(table, indexed());
        applying = false;
        share();
    }

    /** Returns how many of the columns shown begin out of sight, at the right. */
    int beyond() {
        int used = 0;
        int out = 0;
        for (Column<T> column : shown()) {
            used += laid.get(column.id());
            out += used > table.getClientArea().width ? 1 : 0;
        }
        return out;
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
            if (hidden) {
                laid.put(id, 0);
                column.setWidth(0);
            }
        });
        share();
        applying = true;
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

    private void share() {
        List<Column<T>> columns = shown();
        int room = table.getClientArea().width;
        List<Integer> widths =
                new ArrayList<>(ColumnShares.of(columns.stream().map(this::wish).toList(), room));
        int rest = room - widths.stream().mapToInt(Integer::intValue).sum();
        if (rest > 0 && rest < desk.theme().px(NARROWEST)) {
            // a column of so few pixels has no room for its own frame
            widths.set(widths.size() - 1, widths.get(widths.size() - 1) + rest);
            rest = 0;
        }
        sentences.are(needs.sentences(indexed()));
        applying = true;
        for (int i = 0; i < widths.size(); i++) {
            TableColumn column = natives.get(columns.get(i).id());
            laid.put(columns.get(i).id(), widths.get(i));
            if (column.getWidth() != widths.get(i)) {
                column.setWidth(widths.get(i));
            }
        }
        filler.setWidth(Math.max(0, rest));
        applying = false;
    }

    /** What a person has made wider or narrower stays so. */
    private ColumnWish wish(Column<T> column) {
        int width = layout.widths().get(column.id());
        return width == column.width()
                ? needs.wish(index(column), column)
                : new ColumnWish(desk.theme().px(width), desk.theme().px(width));
    }

    private Map<Integer, Column<?>> indexed() {
        Map<Integer, Column<?>> indexed = new LinkedHashMap<>();
        shown().forEach(column -> indexed.put(index(column), column));
        return indexed;
    }

    private int index(Column<T> column) {
        return table.indexOf(natives.get(column.id()));
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
            if (!layout.hidden().contains(id) && column.getWidth() != laid.get(id)) {
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
