package wickbench.widgets;

import org.eclipse.swt.SWT;
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

    @Override
    protected void checkSubclass() {
        // only its size and colours are other than a plain button's
    }
}
