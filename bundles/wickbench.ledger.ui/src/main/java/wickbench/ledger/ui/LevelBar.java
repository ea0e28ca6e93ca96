package wickbench.ledger.ui;

import java.math.BigDecimal;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.reading.Level;
import wickbench.api.words.Decimals;
import wickbench.reading.OutcomeWords;
import wickbench.widgets.Meaning;
import wickbench.widgets.MeaningBar;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Where the amount may lie, as a bar from nothing upwards; an open end has an arrow. The ends are not to one scale. */
final class LevelBar extends Canvas {
    private static final int HEIGHT = 14;
    /** Where the known end stands, as a part of the width. */
    private static final double END = 0.4;

    private final Theme theme;
    private final Level level;

    LevelBar(Composite parent, Theme theme, Level level) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.level = level;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Resize, event -> redraw());
        Names.give(this, () -> OutcomeWords.level(level));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        gc.setFont(theme.font(Type.SMALL));
        int line = gc.getFontMetrics().getHeight();
        gc.dispose();
        return new Point(widthHint == SWT.DEFAULT ? theme.px(200) : widthHint, theme.px(HEIGHT + 6) + line);
    }

    private void paint(GC gc) {
        Rectangle bar = new Rectangle(0, theme.px(2), getClientArea().width - 1, theme.px(HEIGHT));
        gc.setFont(theme.font(Type.SMALL));
        gc.setAntialias(SWT.ON);
        gc.setBackground(theme.color(theme.palette().stripe()));
        gc.fillRectangle(bar);
        int end = (int) (bar.width * END);
        boolean open = level.high().isEmpty();
        int from = open && level.low().isPresent() ? end : 0;
        int to = open ? bar.width : end;
        gc.setForeground(theme.color(theme.palette().edge()));
        gc.drawRectangle(bar);
        int low = bar.y + bar.height;
        if (open) {
            int neck = to - bar.height;
            int tip = bar.y + bar.height / 2;
            MeaningBar.paint(gc, theme, Meaning.ALARM, from, bar.y, neck, bar.y, to, tip, neck, low, from, low);
        } else {
            MeaningBar.paint(gc, theme, Meaning.CALM, from, bar.y, to, bar.y, to, low, from, low);
        }
        ends(gc, bar, end);
    }

    private void ends(GC gc, Rectangle bar, int end) {
        gc.setForeground(theme.color(theme.palette().quiet()));
        int y = bar.y + bar.height + theme.px(2);
        gc.drawText("0", 0, y, true);
        Optional<BigDecimal> known = level.high().or(level::low);
        known.ifPresent(value -> {
            String words = Decimals.of(value) + " " + level.unit().symbol();
            gc.drawLine(end, bar.y, end, bar.y + bar.height + theme.px(2));
            gc.drawText(words, Math.max(theme.px(16), end - gc.textExtent(words).x / 2), y, true);
        });
    }
}
