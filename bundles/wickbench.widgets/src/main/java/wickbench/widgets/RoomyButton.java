package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A native button whose room grows with the text size, which GTK's own does not. */
final class RoomyButton extends Button {
    static final int HEIGHT = 34;
    private static final int BESIDE = 12;
    private final Theme theme;
    private boolean main;

    RoomyButton(Composite parent, Theme theme) {
        super(parent, SWT.PUSH);
        this.theme = theme;
        setFont(theme.font(Type.BODY));
        color();
        addListener(SWT.Paint, event -> ring(event.gc));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        Point own = super.computeSize(widthHint, heightHint, changed);
        int width = widthHint == SWT.DEFAULT ? own.x + theme.px(BESIDE) : own.x;
        return new Point(width, heightHint == SWT.DEFAULT ? Math.max(own.y, theme.px(HEIGHT)) : own.y);
    }

    /** Makes it the one that carries on; while it is disabled it looks like any other. */
    RoomyButton main() {
        main = true;
        setFont(theme.font(Type.STRONG));
        color();
        return this;
    }

    @Override
    public void setEnabled(boolean may) {
        super.setEnabled(may);
        color();
    }

    private void color() {
        boolean carriesOn = main && getEnabled();
        setBackground(theme.color(
                carriesOn ? theme.palette().accent() : theme.palette().button()));
        setForeground(theme.color(
                carriesOn
                        ? theme.palette().onAccent()
                        : getEnabled() ? theme.palette().ink() : theme.palette().quiet()));
    }

    /** Shows the focus plainly; the system's dotted line is lost on the accent and in the dark. */
    private void ring(GC gc) {
        if (isFocusControl()) {
            Point size = getSize();
            int width = theme.px(2);
            gc.setAntialias(SWT.ON);
            gc.setLineWidth(width);
            gc.setForeground(theme.color(
                    main ? theme.palette().onAccent() : theme.palette().accent()));
            int inset = theme.px(main ? 3 : 1);
            gc.drawRoundRectangle(
                    inset, inset, size.x - 2 * inset - 1, size.y - 2 * inset - 1, theme.px(8), theme.px(8));
        }
    }

    @Override
    protected void checkSubclass() {
        // only its size and colours are other than a plain button's
    }
}
