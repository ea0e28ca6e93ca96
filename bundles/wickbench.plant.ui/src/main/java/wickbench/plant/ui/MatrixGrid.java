package wickbench.plant.ui;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.terms.ChangeWords;
import wickbench.widgets.Mark;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** All changes of a line: rows from, columns to. Arrows, Home and End go from cell to cell. */
final class MatrixGrid extends Canvas {
    private static final int CELL = 134;
    private static final int ROW = 40;
    private static final int LEFT = 150;
    private static final int TOP = 46;

    private final Theme theme;
    private final Consumer<Changeover> chosen;
    private List<List<Changeover>> rows = List.of();
    private int row;
    private int column = 1;

    MatrixGrid(Composite parent, Theme theme, Consumer<Changeover> chosen) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.chosen = chosen;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, event -> at(event.x, event.y));
        addListener(SWT.KeyDown, this::key);
        addListener(
                SWT.Traverse,
                event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                        || event.detail == SWT.TRAVERSE_TAB_PREVIOUS
                        || event.detail == SWT.TRAVERSE_MNEMONIC);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        Names.give(this, this::inWords);
    }

    void show(List<List<Changeover>> changes) {
        rows = changes;
        row = Math.max(0, Math.min(row, rows.size() - 1));
        column = Math.max(0, Math.min(column, rows.size() - 1));
        redraw();
        tell();
    }

    /** Goes to a cell. */
    void choose(int from, int to) {
        if (from >= 0 && to >= 0 && from < rows.size() && to < rows.size()) {
            row = from;
            column = to;
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

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(LEFT + CELL * rows.size() + 2), theme.px(TOP + ROW * rows.size() + 2));
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
        if (x >= theme.px(LEFT) && y >= theme.px(TOP)) {
            choose((y - theme.px(TOP)) / theme.px(ROW), (x - theme.px(LEFT)) / theme.px(CELL));
        }
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        for (int i = 0; i < rows.size(); i++) {
            head(
                    gc,
                    rows.get(i).get(0).from().name(),
                    new Rectangle(0, theme.px(TOP + ROW * i), theme.px(LEFT), theme.px(ROW)),
                    i == row);
            head(
                    gc,
                    rows.get(0).get(i).to().name(),
                    new Rectangle(theme.px(LEFT + CELL * i), 0, theme.px(CELL), theme.px(TOP)),
                    i == column);
            for (int j = 0; j < rows.size(); j++) {
                cell(
                        gc,
                        rows.get(i).get(j),
                        new Rectangle(
                                theme.px(LEFT + CELL * j), theme.px(TOP + ROW * i), theme.px(CELL), theme.px(ROW)));
            }
        }
        corner(gc);
        frame(gc);
    }

    private void corner(GC gc) {
        gc.setFont(theme.font(Type.SMALL));
        gc.setForeground(theme.color(theme.palette().quiet()));
        gc.drawText(PlantUiWords.get("changes.corner"), theme.px(6), theme.px(8), true);
    }

    private void head(GC gc, String name, Rectangle box, boolean here) {
        gc.setFont(theme.font(here ? Type.STRONG : Type.BODY));
        gc.setForeground(theme.color(theme.palette().ink()));
        String words = fitted(gc, name, box.width - theme.px(12));
        gc.drawText(words, box.x + theme.px(6), box.y + (box.height - gc.textExtent(words).y) / 2, true);
    }

    /** Cuts words that are too long for their room; the whole of them stands in the explanation beside. */
    private static String fitted(GC gc, String words, int width) {
        String cut = words;
        while (cut.length() > 1 && gc.textExtent(cut).x > width) {
            cut = cut.substring(0, cut.length() - 2).stripTrailing() + "\u2026";
        }
        return cut;
    }

    private void cell(GC gc, Changeover change, Rectangle box) {
        Mark mark = ChangeMarks.of(change);
        gc.setBackground(theme.color(theme.tone(mark.meaning()).wash()));
        gc.fillRectangle(box.x + 1, box.y + 1, box.width - 2, box.height - 2);
        Image shape = theme.image(mark.shape(), mark.meaning());
        Rectangle size = shape.getBounds();
        gc.drawImage(shape, box.x + theme.px(4), box.y + (box.height - size.height) / 2);
        gc.setFont(theme.font(Type.SMALL));
        gc.setForeground(theme.color(theme.tone(mark.meaning()).ink()));
        int left = box.x + theme.px(6) + size.width;
        String words = fitted(gc, mark.word(), box.x + box.width - left - theme.px(2));
        gc.drawText(words, left, box.y + (box.height - gc.textExtent(words).y) / 2, true);
    }

    private void frame(GC gc) {
        if (!rows.isEmpty()) {
            gc.setForeground(theme.color(theme.palette().accent()));
            gc.setLineWidth(theme.px(isFocusControl() ? 3 : 2));
            gc.drawRectangle(
                    theme.px(LEFT + CELL * column) + 1,
                    theme.px(TOP + ROW * row) + 1,
                    theme.px(CELL) - 3,
                    theme.px(ROW) - 3);
            gc.setLineWidth(1);
        }
    }
}
