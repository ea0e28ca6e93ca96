package wickbench.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A state said three times: by word, shape and colour. */
public final class Badge extends Canvas {
    private static final List<Type> SMALLER = List.of(Type.TITLE, Type.HEADING, Type.STRONG, Type.SMALL);

    private final Theme theme;
    private final Type type;
    private Mark mark;

    public Badge(Composite parent, Theme theme, Mark mark) {
        this(parent, theme, Type.STRONG, mark);
    }

    public Badge(Composite parent, Theme theme, Type type, Mark mark) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.type = type;
        this.mark = mark;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.role(Names.give(this, () -> this.mark.word()), ACC.ROLE_LABEL);
    }

    /** Shows another state. */
    public void show(Mark next) {
        mark = next;
        getParent().layout(new Control[] {this});
        redraw();
    }

    public Mark shown() {
        return mark;
    }

    /** Tells whether its words have room, in a smaller type if need be. */
    public boolean whole() {
        GC gc = new GC(this);
        Point words = fitting(gc, getSize().x);
        gc.dispose();
        return wide(words) <= getSize().x;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        gc.setFont(theme.font(type));
        Point words = gc.textExtent(mark.word());
        gc.dispose();
        return new Point(wide(words), words.y + gap());
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        Point words = fitting(gc, area.width);
        Tone tone = theme.tone(mark.meaning());
        gc.setBackground(theme.color(tone.wash()));
        gc.fillRoundRectangle(0, 0, Math.min(area.width, wide(words)), area.height, theme.px(8), theme.px(8));
        int side = side(words.y);
        ShapePainter.paint(
                gc, theme, mark.shape(), mark.meaning(), new Rectangle(gap(), (area.height - side) / 2, side, side));
        gc.setForeground(theme.color(tone.ink()));
        gc.drawText(mark.word(), side + 2 * gap(), (area.height - words.y) / 2, true);
    }

    /** Takes the largest type, its own at most, in which the words fit; a word cut off would say something else. */
    private Point fitting(GC gc, int room) {
        gc.setFont(theme.font(type));
        Point words = gc.textExtent(mark.word());
        for (Type smaller : SMALLER) {
            if (wide(words) > room && smaller.pixels() < type.pixels()) {
                gc.setFont(theme.font(smaller));
                words = gc.textExtent(mark.word());
            }
        }
        return words;
    }

    private int wide(Point words) {
        return words.x + side(words.y) + 3 * gap();
    }

    private int gap() {
        return theme.px(8);
    }

    private static int side(int textHeight) {
        return Math.round(textHeight * 0.72f);
    }
}
