package wickbench.figures.ui;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;
import wickbench.widgets.Type;

/**
 * Cells to type in: arrows go from cell to cell, any character begins one anew, Enter and F2 change it, Delete empties it.
 *
 * <p>There is always an empty row below; column 0 counts the rows.
 */
final class CellGrid {
    private static final int FEWEST = 3;
    private static final int MOST = 8;
    private static final int NUMBER = 38;
    private static final int CELL = 92;
    private static final int LEAST = 3;
    private static final int WIDEST = 60;

    private final Theme theme;
    private final Table table;
    private final TableCursor cursor;
    private final List<String> columns;
    private final Runnable changed;
    private final CellEdit edit;

    CellGrid(Composite parent, Theme theme, String name, List<String> columns, Runnable changed, Runnable paste) {
        this.theme = theme;
        this.columns = columns;
        this.changed = changed;
        table = ThemedTable.cells(parent, theme, () -> name);
        table.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        column("", NUMBER);
        columns.forEach(column -> column(column, CELL));
        widen(columns.isEmpty() ? LEAST : columns.size());
        cursor = new TableCursor(table, SWT.NONE);
        cursor.setFont(theme.font(Type.BODY));
        cursor.setBackground(theme.color(theme.palette().selection()));
        cursor.setForeground(theme.color(theme.palette().onSelection()));
        edit = new CellEdit(this, theme);
        Names.give(cursor, this::said);
        cursor.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> edit.begin(here())));
        cursor.addListener(SWT.MouseDown, event -> edit.begin(here()));
        cursor.addListener(SWT.KeyDown, event -> key(event, paste));
        fill(List.of());
    }

    private void column(String name, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(name);
        column.setWidth(theme.px(width));
    }

    /** A table without names has as many columns as there are cells in a row. */
    private void widen(int cells) {
        while (table.getColumnCount() <= Math.min(WIDEST, cells)) {
            column(String.valueOf(table.getColumnCount()), CELL);
        }
    }

    private void key(Event event, Runnable paste) {
        boolean control = (event.stateMask & SWT.MOD1) != 0;
        if (control && event.keyCode == 'v') {
            paste.run();
        } else if (control && event.keyCode == 'c') {
            CellTable.copy(theme, here());
        } else if (event.keyCode == SWT.DEL || event.keyCode == SWT.BS) {
            set("");
        } else if (event.keyCode == SWT.F2) {
            edit.begin(here());
        } else if (!control
                && (event.stateMask & SWT.MOD3) == 0
                && event.character >= ' '
                && event.character != SWT.DEL) {
            edit.begin(String.valueOf(event.character));
        }
    }

    TableCursor cursor() {
        return cursor;
    }

    private int column() {
        return Math.max(1, cursor.getColumn());
    }

    private int row() {
        return cursor.getRow() == null ? 0 : table.indexOf(cursor.getRow());
    }

    String here() {
        return table.getItem(row()).getText(column());
    }

    private String said() {
        return FiguresUiWords.get("table.cell", table.getColumn(column()).getText(), row() + 1, here());
    }

    /** Writes into the cell of the cursor. */
    void set(String text) {
        table.getItem(row()).setText(column(), text);
        spare();
        cursor.redraw();
        changed.run();
    }

    /** Goes on from the cell of the cursor, to the next row's first cell behind the last. */
    void step(int across, int down) {
        int last = table.getColumnCount() - 1;
        int column = column() + across;
        int row = row() + down;
        if (column > last) {
            column = 1;
            row++;
        } else if (column < 1) {
            column = last;
            row--;
        }
        if (row >= 0 && row < table.getItemCount()) {
            cursor.setSelection(row, column);
        }
        cursor.setFocus();
    }

    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (TableItem item : table.getItems()) {
            List<String> cells = new ArrayList<>();
            for (int i = 1; i < table.getColumnCount(); i++) {
                cells.add(item.getText(i));
            }
            rows.add(cells);
        }
        return rows;
    }

    boolean isBlank() {
        return rows().stream().flatMap(List::stream).allMatch(String::isBlank);
    }

    /** Puts rows in place of all there are; a shorter row is filled up at the left where the columns have names. */
    void fill(List<List<String>> rows) {
        table.setRedraw(false);
        table.removeAll();
        write(0, 1, rows.stream().map(this::filled).toList());
        table.setRedraw(true);
        cursor.setSelection(0, 1);
        measure();
    }

    /** As high as its rows, within bounds. */
    private void measure() {
        int rows = Math.max(FEWEST, Math.min(MOST, table.getItemCount()));
        int height = table.getHeaderHeight() + rows * table.getItemHeight() + 2 * table.getBorderWidth();
        ((GridData) table.getLayoutData()).heightHint = height;
        table.requestLayout();
    }

    private List<String> filled(List<String> row) {
        List<String> cells = new ArrayList<>(Collections.nCopies(Math.max(0, columns.size() - row.size()), ""));
        cells.addAll(row);
        return cells;
    }

    /** Writes rows from the cell of the cursor on. */
    void put(List<List<String>> rows) {
        write(row(), column(), rows);
        cursor.redraw();
    }

    private void write(int fromRow, int fromColumn, List<List<String>> rows) {
        if (columns.isEmpty()) {
            widen(fromColumn - 1 + rows.stream().mapToInt(List::size).max().orElse(LEAST));
        }
        for (int i = 0; i < rows.size(); i++) {
            while (table.getItemCount() <= fromRow + i) {
                add();
            }
            for (int j = 0; j < rows.get(i).size() && fromColumn + j < table.getColumnCount(); j++) {
                table.getItem(fromRow + i).setText(fromColumn + j, rows.get(i).get(j));
            }
        }
        spare();
    }

    private void spare() {
        int last = table.getItemCount() - 1;
        boolean used = last < 0;
        for (int i = 1; !used && i < table.getColumnCount(); i++) {
            used = !table.getItem(last).getText(i).isBlank();
        }
        if (used) {
            add();
        }
    }

    private void add() {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(0, String.valueOf(table.getItemCount()));
    }

    /** Shows a row, counted from 1. */
    void reveal(int row) {
        if (row <= table.getItemCount()) {
            table.showItem(table.getItem(row - 1));
        }
    }
}
