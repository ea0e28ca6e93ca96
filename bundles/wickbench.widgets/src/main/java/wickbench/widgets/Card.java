package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

/** A surface with an edge and round corners. */
final class Card extends Composite {
    private static final int CORNER = 6;

    Card(Composite parent, Theme theme, GridLayout layout) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        setBackground(theme.color(theme.palette().surface()));
        setLayout(layout);
        addListener(SWT.Paint, event -> paint(event.gc, theme));
        addListener(SWT.Resize, event -> redraw());
    }

    private void paint(GC gc, Theme theme) {
        Rectangle area = getClientArea();
        int corner = theme.px(CORNER) * 2;
        gc.setAntialias(SWT.ON);
        gc.setBackground(getParent().getBackground());
        gc.fillRectangle(area);
        gc.setBackground(getBackground());
        gc.fillRoundRectangle(0, 0, area.width - 1, area.height - 1, corner, corner);
        gc.setForeground(theme.color(theme.palette().edge()));
        gc.drawRoundRectangle(0, 0, area.width - 1, area.height - 1, corner, corner);
    }
}
