package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A sentence with a mark before it; the mark's word stands below in small, and says what the shape and colour say. */
public final class MarkedLine extends Composite {
    private static final int SHAPE = 12;

    /** Makes the line; a mark with a blank word has no second row. */
    public MarkedLine(Composite parent, Theme theme, Mark mark, String text) {
        super(parent, SWT.NO_FOCUS);
        setBackground(parent.getBackground());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = theme.px(2);
        layout.marginLeft = theme.px(SHAPE + 10);
        layout.verticalSpacing = 0;
        setLayout(layout);
        Label words = theme.controls().text(this, Type.BODY, text);
        if (!mark.word().isBlank()) {
            Label small = Fit.wide(theme.controls().quiet(this, mark.word()));
            small.setForeground(theme.color(theme.tone(mark.meaning()).ink()));
        }
        addListener(SWT.Paint, event -> paint(event.gc, theme, mark, words));
    }

    private static void paint(GC gc, Theme theme, Mark mark, Label words) {
        int side = theme.px(SHAPE);
        gc.setFont(words.getFont());
        int line = gc.getFontMetrics().getHeight();
        ShapePainter.paint(
                gc,
                theme,
                mark.shape(),
                mark.meaning(),
                new Rectangle(theme.px(2), words.getLocation().y + (line - side) / 2, side, side));
    }
}
