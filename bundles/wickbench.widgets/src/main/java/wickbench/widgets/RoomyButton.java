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

    RoomyButton(Composite parent, Theme theme) {
        super(parent, SWT.PUSH);
        this.theme = theme;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        Point own = super.computeSize(widthHint, heightHint, changed);
        int width = widthHint == SWT.DEFAULT ? own.x + theme.px(BESIDE) : own.x;
        return new Point(width, heightHint == SWT.DEFAULT ? Math.max(own.y, theme.px(HEIGHT)) : own.y);
    }

    @Override
    protected void checkSubclass() {
        // only its size is other than a plain button's
    }
}
