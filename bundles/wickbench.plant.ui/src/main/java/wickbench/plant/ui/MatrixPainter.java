package wickbench.plant.ui;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import wickbench.plant.changeover.Changeover;
import wickbench.widgets.Mark;
import wickbench.widgets.ShortWords;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Paints the cells of a matrix that are seen, under their headings. */
record MatrixPainter(Theme theme) {
    private static final int CELL = 134;
    private static final int ROW = 40;
    private static final int LEFT = 150;
    private static final int TOP = 46;

    /**
     * What is seen.
     *
     * @param room the whole room, headings included
     * @param from how far the cells are scrolled, in pixels
     * @param row of the chosen cell
     * @param column of the chosen cell
     */
    record Seen(Rectangle room, Point from, int row, int column, boolean focused) {}

    /** The width of a cell in pixels; the others likewise. */
    int cell() {
        return theme.px(CELL);
    }

    int row() {
        return theme.px(ROW);
    }

    int left() {
        return theme.px(LEFT);
    }

    int top() {
        return theme.px(TOP);
    }

    void paint(GC gc, List<List<Changeover>> rows, Seen seen) {
        gc.setAntialias(SWT.ON);
        corner(gc);
        if (rows.isEmpty()) {
            return;
        }
        int firstRow = seen.from().y / row();
        int lastRow = Math.min(rows.size() - 1, (seen.from().y + seen.room().height - top()) / row());
        int firstColumn = seen.from().x / cell();
        int lastColumn = Math.min(rows.size() - 1, (seen.from().x + seen.room().width - left()) / cell());
        gc.setClipping(0, top(), left(), seen.room().height);
        for (int i = firstRow; i <= lastRow; i++) {
            Rectangle box = new Rectangle(0, y(i, seen), left(), row());
            head(gc, rows.get(i).get(0).from().name(), box, i == seen.row());
        }
        gc.setClipping(left(), 0, seen.room().width, top());
        for (int j = firstColumn; j <= lastColumn; j++) {
            Rectangle box = new Rectangle(x(j, seen), 0, cell(), top());
            head(gc, rows.get(0).get(j).to().name(), box, j == seen.column());
        }
        gc.setClipping(left(), top(), seen.room().width, seen.room().height);
        for (int i = firstRow; i <= lastRow; i++) {
            for (int j = firstColumn; j <= lastColumn; j++) {
                cell(gc, rows.get(i).get(j), new Rectangle(x(j, seen), y(i, seen), cell(), row()));
            }
        }
        frame(gc, seen);
        gc.setClipping((Rectangle) null);
    }

    private int x(int column, Seen seen) {
        return left() + cell() * column - seen.from().x;
    }

    private int y(int row, Seen seen) {
        return top() + row() * row - seen.from().y;
    }

    private void corner(GC gc) {
        gc.setFont(theme.font(Type.SMALL));
        gc.setForeground(theme.color(theme.palette().quiet()));
        gc.drawText(PlantUiWords.get("changes.corner"), theme.px(6), theme.px(8), true);
    }

    private void head(GC gc, String name, Rectangle box, boolean here) {
        gc.setFont(theme.font(here ? Type.STRONG : Type.BODY));
        gc.setForeground(theme.color(theme.palette().ink()));
        // the whole of it stands in the explanation beside
        String words = ShortWords.fitting(gc, name, box.width - theme.px(12));
        gc.drawText(words, box.x + theme.px(6), box.y + (box.height - gc.textExtent(words).y) / 2, true);
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
        int start = box.x + theme.px(6) + size.width;
        // the whole of it stands in the explanation beside
        String words = ShortWords.fitting(gc, mark.word(), box.x + box.width - start - theme.px(2));
        gc.drawText(words, start, box.y + (box.height - gc.textExtent(words).y) / 2, true);
    }

    private void frame(GC gc, Seen seen) {
        gc.setForeground(theme.color(theme.palette().accent()));
        gc.setLineWidth(theme.px(seen.focused() ? 3 : 2));
        gc.drawRectangle(x(seen.column(), seen) + 1, y(seen.row(), seen) + 1, cell() - 3, row() - 3);
        gc.setLineWidth(1);
    }
}
