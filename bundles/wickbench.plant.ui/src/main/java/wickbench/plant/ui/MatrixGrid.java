package wickbench.plant.ui;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.terms.ChangeWords;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;

/**
 * All changes of a line: rows from, columns to. Arrows, Home and End go from cell to cell.
 *
 * <p>It scrolls by itself, under headings that stay, and paints what is seen only: 400 products are 160,000 cells, wider than
 * any window may be.
 */
final class MatrixGrid extends Canvas {
    private final MatrixPainter painter;
    private final Consumer<Changeover> chosen;
    private List<List<Changeover>> rows = List.of();
    private int row;
    private int column = 1;

    MatrixGrid(Composite parent, Theme theme, Consumer<Changeover> chosen) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.H_SCROLL | SWT.V_SCROLL);
        this.painter = new MatrixPainter(theme);
        this.chosen = chosen;
        setBackground(parent.getBackground());
        addListener(
                SWT.Paint,
                event -> painter.paint(
                        event.gc,
                        rows,
                        new MatrixPainter.Seen(getClientArea(), scrolled(), row, column, isFocusControl())));
        addListener(SWT.MouseDown, event -> at(event.x, event.y));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Resize, event -> bars());
        addListener(
                SWT.Traverse,
                event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                        || event.detail == SWT.TRAVERSE_TAB_PREVIOUS
                        || event.detail == SWT.TRAVERSE_MNEMONIC);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        getHorizontalBar().addListener(SWT.Selection, event -> redraw());
        getVerticalBar().addListener(SWT.Selection, event -> redraw());
        Names.give(this, this::inWords);
    }

    void show(List<List<Changeover>> changes) {
        rows = changes;
        row = Math.max(0, Math.min(row, rows.size() - 1));
        column = Math.max(0, Math.min(column, rows.size() - 1));
        bars();
        redraw();
        tell();
    }

    /** Goes to a cell, and scrolls to where it is seen. */
    void choose(int from, int to) {
        if (from >= 0 && to >= 0 && from < rows.size() && to < rows.size()) {
            row = from;
            column = to;
            seek(getHorizontalBar(), painter.cell() * column, painter.cell());
            seek(getVerticalBar(), painter.row() * row, painter.row());
            redraw();
            tell();
        }
    }

    private void tell() {
        if (!rows.isEmpty()) {
            chosen.accept(rows.get(row).get(column));
        }
    }

    /** Returns the chosen change as it is read aloud. */
    String inWords() {
        return rows.isEmpty()
                ? PlantUiWords.get("changes.name")
                : String.join(" ", ChangeWords.explain(rows.get(row).get(column)));
    }

    private Point scrolled() {
        return new Point(getHorizontalBar().getSelection(), getVerticalBar().getSelection());
    }

    private void bars() {
        Rectangle room = getClientArea();
        span(getHorizontalBar(), painter.cell() * rows.size(), room.width - painter.left(), painter.cell());
        span(getVerticalBar(), painter.row() * rows.size(), room.height - painter.top(), painter.row());
    }

    private static void span(ScrollBar bar, int whole, int seen, int step) {
        int thumb = Math.max(1, Math.min(whole, seen));
        bar.setValues(bar.getSelection(), 0, Math.max(1, whole), thumb, step, Math.max(step, thumb - step));
        bar.setVisible(whole > seen);
    }

    private static void seek(ScrollBar bar, int at, int length) {
        if (at < bar.getSelection()) {
            bar.setSelection(at);
        } else if (at + length > bar.getSelection() + bar.getThumb()) {
            bar.setSelection(at + length - bar.getThumb());
        }
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_RIGHT -> choose(row, column + 1);
            case SWT.ARROW_LEFT -> choose(row, column - 1);
            case SWT.ARROW_DOWN -> choose(row + 1, column);
            case SWT.ARROW_UP -> choose(row - 1, column);
            case SWT.HOME -> choose(row, 0);
            case SWT.END -> choose(row, rows.size() - 1);
            default -> {
                // every other key goes where it always goes
            }
        }
    }

    private void at(int x, int y) {
        setFocus();
        if (x >= painter.left() && y >= painter.top()) {
            choose(
                    (y - painter.top() + scrolled().y) / painter.row(),
                    (x - painter.left() + scrolled().x) / painter.cell());
        }
    }
}
