package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** A native drop-down list whose height grows with the text size. */
final class RoomyCombo extends Combo {
    private final Theme theme;

    RoomyCombo(Composite parent, Theme theme) {
        super(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        this.theme = theme;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        Point own = super.computeSize(widthHint, heightHint, changed);
        return new Point(own.x, heightHint == SWT.DEFAULT ? Math.max(own.y, theme.px(RoomyButton.HEIGHT)) : own.y);
    }

    @Override
    protected void checkSubclass() {
        // only its size is other than a plain list's
    }
}
