package wickbench.ledger.ui;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Names;
import wickbench.widgets.Spans;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A stretch of time drawn to scale: what was done below it, what the method asks for as shaded bands. */
final class TimeLine extends Canvas {
    private static final int BAR = 22;
    private static final int GAP = 4;
    private static final int NEAR = 12;

    private final Theme theme;
    private final SiteTimes times;
    private final TimeTrack track;

    TimeLine(Composite parent, Theme theme, SiteTimes times, TimeTrack track) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.times = times;
        this.track = track;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Resize, event -> redraw());
        Names.give(this, this::words);
    }

    /** Returns what is drawn, in words. */
    String words() {
        return track.name() + ": " + track.marks().stream().map(this::words).collect(Collectors.joining(", "));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        gc.setFont(theme.font(Type.SMALL));
        int line = gc.getFontMetrics().getHeight();
        gc.dispose();
        int rows = Math.max(1, track.marks().size() - 1);
        int height = theme.px(BAR) + theme.px(GAP) * 3 + line * (rows + 1);
        return new Point(widthHint == SWT.DEFAULT ? theme.px(240) : widthHint, height);
    }

    private void paint(GC gc) {
        gc.setFont(theme.font(Type.SMALL));
        gc.setAntialias(SWT.ON);
        int line = gc.getFontMetrics().getHeight();
        Rectangle bar = new Rectangle(0, line + theme.px(GAP), getClientArea().width - 1, theme.px(BAR));
        gc.setForeground(theme.color(theme.palette().quiet()));
        gc.drawText(track.name(), 0, 0, true);
        gc.setBackground(theme.color(theme.palette().stripe()));
        gc.fillRectangle(bar);
        track.bands().forEach(band -> band(gc, bar, band));
        gc.setForeground(theme.color(theme.palette().edge()));
        gc.drawRectangle(bar);
        marks(gc, bar, line);
    }

    private void band(GC gc, Rectangle bar, TimeTrack.Band band) {
        int from = x(bar, band.from());
        int to = x(bar, band.to());
        gc.setBackground(theme.color(theme.tone(band.meaning()).wash()));
        gc.fillRectangle(from, bar.y, to - from, bar.height);
        gc.setForeground(theme.color(theme.tone(band.meaning()).ink()));
        gc.drawLine(to, bar.y, to, bar.y + bar.height);
        gc.setForeground(theme.color(theme.tone(band.meaning()).ink()));
        Point size = gc.textExtent(band.words());
        int middle = (from + to - size.x) / 2;
        if (size.x * 2 < to - from) {
            gc.drawText(band.words(), middle, bar.y + (bar.height - size.y) / 2, true);
        } else if (middle > gc.textExtent(track.name()).x + theme.px(NEAR)) {
            gc.drawText(band.words(), Math.min(middle, bar.width - size.x), 0, true);
        }
    }

    /** Each mark gets its words below, in the first row where they cover nothing. */
    private void marks(GC gc, Rectangle bar, int line) {
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.setLineWidth(theme.px(2));
        track.marks().forEach(mark -> {
            int x = x(bar, mark.at());
            gc.drawLine(x, bar.y - theme.px(2), x, bar.y + bar.height + theme.px(2));
        });
        gc.setLineWidth(1);
        List<Rectangle> taken = new ArrayList<>();
        for (TimeTrack.Mark mark : track.marks()) {
            Point size = gc.textExtent(words(mark));
            int left = Math.max(0, Math.min(x(bar, mark.at()) - size.x / 2, bar.width - size.x));
            Rectangle at = new Rectangle(left, bar.y + bar.height + theme.px(GAP), size.x + theme.px(NEAR), line);
            while (taken.stream().anyMatch(at::intersects)) {
                at.y += line;
            }
            taken.add(at);
            gc.drawText(words(mark), at.x, at.y, true);
        }
    }

    private String words(TimeTrack.Mark mark) {
        String when = mark.words() + " " + times.clock(mark.when());
        return mark.at().isZero() ? when : when + ", " + Spans.words(mark.at());
    }

    private int x(Rectangle bar, Duration at) {
        double part = (double) at.toMillis() / Math.max(1, track.length().toMillis());
        return Math.max(1, Math.min(bar.width - 1, (int) Math.round(bar.width * part)));
    }
}
