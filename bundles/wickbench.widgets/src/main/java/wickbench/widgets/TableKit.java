package wickbench.widgets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;

/**
 * A table as all pages have it: filter, sort, columns, copy, export, a layout that is remembered, and any number of rows.
 *
 * <p>It holds a window of rows and reads further slices when one scrolls to its end. Everything works from the keyboard: the
 * menu of the table (menu key or Shift+F10, or its button) sorts and chooses columns, Ctrl+C copies, Ctrl+F goes to the filter.
 */
public final class TableKit<T> {
    private final Desk desk;
    private final TableSpec<T> spec;
    private final Composite box;
    private final TableBar bar;
    private final NoRows none;
    private final TableRows<T> rows;
    private final TableColumns<T> columns;
    private final Table table;
    private final List<Consumer<List<T>>> selectListeners = new ArrayList<>();
    private final List<Consumer<T>> openListeners = new ArrayList<>();
    private final List<Runnable> loadListeners = new ArrayList<>();
    private Optional<CellCursor<T>> cells = Optional.empty();

    /** Makes the table and starts to load its first rows. */
    public TableKit(Composite parent, Desk desk, TableSpec<T> spec) {
        this.desk = desk;
        this.spec = spec;
        box = desk.theme().controls().box(parent, 1);
        bar = new TableBar(box, desk.theme(), spec.name(), this::reload);
        none = new NoRows(box, desk.theme());
        table = Fit.grow(ThemedTable.headed(box, desk.theme(), SWT.MULTI, spec::name));
        columns = new TableColumns<>(table, desk, spec, this::reload);
        rows = new TableRows<>(table, desk, spec, columns, this::loaded);
        bar.menu(new TableMenu<>(this, columns).on(table));
        listen();
        reload();
    }

    /** Returns the control to lay out. */
    public Composite control() {
        return box;
    }

    /** Tells whether a column holds sentences, which end behind a whole word where there is no room; a check of the words asks. */
    public static boolean shortens(Table table, int column) {
        return ShortCells.are(table, column);
    }

    /** Reads all rows anew, from the first. */
    public void reload() {
        bar.say(WidgetWords.get("table.loading"));
        rows.restart(ask());
    }

    /** Returns the words in the filter box. */
    public String filter() {
        return bar.filter();
    }

    /** Puts words into the filter box and reads anew. */
    public void filter(String words) {
        bar.filter(words);
        reload();
    }

    /** Sorts by a column, the other way round if it is sorted by it already. */
    public void sortBy(String column) {
        columns.sortBy(column);
    }

    /** Shows a hidden column, or hides it; the last one shown stays. */
    public void toggleColumn(String column) {
        columns.toggle(column);
        bar.beyond(columns.beyond());
    }

    /** Goes back to the first order, widths and columns. */
    public void resetLayout() {
        columns.reset();
        bar.beyond(columns.beyond());
    }

    /** Returns the rows at hand, in order. */
    public List<T> rows() {
        return List.copyOf(rows.window().rows());
    }

    public List<T> selected() {
        return rows.selected();
    }

    /** Selects a row that is at hand and brings it into view; returns whether it is. */
    public boolean select(T row) {
        boolean there = rows.select(row);
        selectionChanged();
        return there;
    }

    public void onSelect(Consumer<List<T>> listener) {
        selectListeners.add(listener);
    }

    /** Hears of a double click or Enter on a row. */
    public void onOpen(Consumer<T> listener) {
        openListeners.add(listener);
    }

    /** Lets one go from cell to cell of the selected row, and hears the id of the column gone to. */
    public void onCell(Consumer<String> listener) {
        if (cells.isEmpty()) {
            cells = Optional.of(new CellCursor<>(table, desk.theme(), columns));
        }
        cells.get().onChange(listener);
    }

    /** Goes to the cell of a column; nobody hears of it. */
    public void cell(String column) {
        cells.ifPresent(cursor -> cursor.show(column));
    }

    /** Hears when rows have been read. */
    public void onLoaded(Runnable listener) {
        loadListeners.add(listener);
    }

    public void focus() {
        table.setFocus();
    }

    /** Puts the selected rows into the clipboard, cells parted by tabs. */
    public void copy() {
        String text = TabText.of(selected(), columns.shown());
        if (!text.isEmpty()) {
            Clipboard clipboard = new Clipboard(table.getDisplay());
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
            bar.say(WidgetWords.get("table.copied", selected().size()));
        }
    }

    /** Asks for a file and exports into it. */
    public void export() {
        desk.files().save(spec.id().replace('.', '-') + ".csv", "*.csv").ifPresent(this::export);
    }

    /** Writes all rows that pass the filter, with the columns shown and in their order, as CSV. */
    public Job export(Path file) {
        TableExport<T> export = new TableExport<>(spec.source(), ask(), columns.shown());
        return desk.jobs()
                .run(
                        WidgetWords.get("table.exporting", file.getFileName()),
                        progress -> export.write(file, progress),
                        written -> bar.say(written.map(n -> WidgetWords.get("table.exported", n, file))
                                .orElse(WidgetWords.get("table.export-stopped"))),
                        failure -> bar.say(WidgetWords.get("table.export-failed", file, failure.getMessage())));
    }

    private Ask ask() {
        return new Ask(bar.filter(), columns.layout().sort());
    }

    private void listen() {
        table.addListener(SWT.Selection, event -> selectionChanged());
        table.addListener(SWT.Resize, event -> bar.beyond(columns.beyond()));
        table.addListener(SWT.DefaultSelection, event -> open());
        table.addListener(SWT.KeyDown, this::key);
    }

    private void open() {
        selected().stream().findFirst().ifPresent(row -> openListeners.forEach(listener -> listener.accept(row)));
    }

    private void key(Event event) {
        boolean control = (event.stateMask & SWT.MOD1) != 0;
        switch (event.keyCode) {
            case 'c' -> when(control, this::copy);
            case 'f' -> when(control, bar::focusFilter);
            case 'a' -> when(control, this::selectAll);
            case SWT.CR, SWT.KEYPAD_CR -> {
                // the system opens only a row that its own keys have gone to, not one that was chosen for the person
                event.doit = false;
                open();
            }
            default -> rows.moved();
        }
    }

    private void selectAll() {
        table.selectAll();
        selectionChanged();
    }

    private static void when(boolean condition, Runnable act) {
        if (condition) {
            act.run();
        }
    }

    private void selectionChanged() {
        List<T> now = selected();
        bar.selected(now.size());
        selectListeners.forEach(listener -> listener.accept(now));
    }

    private String whyNone() {
        return bar.filter().isBlank() ? spec.empty() : WidgetWords.get("table.no-match", bar.filter());
    }

    private void loaded() {
        if (rows.window().rows().size() <= RowWindow.SLICE) {
            columns.fit();
        }
        bar.beyond(columns.beyond());
        bar.count(rows.window().rows().size(), rows.count(), rows.window().skipped());
        none.say(rows.window().rows().isEmpty() ? whyNone() : "");
        loadListeners.forEach(Runnable::run);
    }
}
