package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Glyph;
import wickbench.widgets.Names;
import wickbench.widgets.Pen;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The name of the program with its sign: a bench, and liquid that climbs a wick. */
final class Wordmark extends Canvas {
    static final Glyph SIGN = pen -> pen.line(2, 18, 22, 18)
            .line(5, 18, 5, 22)
            .line(19, 18, 19, 22)
            .line(12, 18, 12, 9)
            .line(12, 9, 9, 5, 12, 2, 15, 5, 12, 9);
    private static final String NAME = "Wickbench";
    private static final int GAP = 8;
    private static final int SIDE = 24;
    /** As wide as the rail below it, less the margin of the bar. */
    private static final int WIDTH = 168;

    private final Theme theme;

    Wordmark(Composite parent, Theme theme) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.give(this, () -> NAME);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(WIDTH), theme.px(SIDE + GAP));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        int side = theme.px(SIDE);
        Pen.draw(
                gc,
                SIGN,
                new Rectangle(theme.px(4), (area.height - side) / 2, side, side),
                theme.color(theme.palette().accent()));
        gc.setFont(theme.font(Type.HEADING));
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.drawText(NAME, side + theme.px(4 + GAP), (area.height - gc.textExtent(NAME).y) / 2, true);
    }
}
