package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** A native field of one line whose height grows with the text size. */
final class RoomyText extends Text {
    private final Theme theme;

    RoomyText(Composite parent, Theme theme, int style) {
        super(parent, SWT.BORDER | SWT.SINGLE | style);
        this.theme = theme;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        Point own = super.computeSize(widthHint, heightHint, changed);
        return new Point(own.x, heightHint == SWT.DEFAULT ? Math.max(own.y, theme.px(RoomyButton.HEIGHT)) : own.y);
    }

    @Override
    protected void checkSubclass() {
        // only its size is other than a plain field's
    }
}
