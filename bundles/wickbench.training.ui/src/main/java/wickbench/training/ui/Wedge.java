package wickbench.training.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.drill.StepWedge;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;

/** One row of a step wedge. */
final class Wedge extends Canvas {
    private static final int STEP = 56;
    private static final int SPOT = 22;

    private final Theme theme;
    private final StepWedge.Row row;

    Wedge(Composite parent, Theme theme, StepWedge.Row row, String says) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.row = row;
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.give(this, () -> says);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(StepWedge.STEPS * theme.px(STEP), theme.px(STEP));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        int side = theme.px(STEP);
        int spot = theme.px(SPOT);
        for (int i = 0; i < row.steps().size(); i++) {
            StepWedge.Step step = row.steps().get(i);
            gc.setBackground(grey(step.grey()));
            gc.fillRectangle(i * side, 0, side, area.height);
            gc.setBackground(grey(step.spotGrey()));
            gc.fillOval(i * side + (side - spot) / 2, (area.height - spot) / 2, spot, spot);
        }
    }

    StepWedge.Row row() {
        return row;
    }

    private static Color grey(int code) {
        return new Color(code, code, code);
    }
}
