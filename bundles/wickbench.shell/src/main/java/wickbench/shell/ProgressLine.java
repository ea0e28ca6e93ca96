package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;

/** How far work is: a bar that fills, or a piece of it that wanders while nobody knows the end. */
final class ProgressLine extends Canvas {
    private static final int WIDTH = 160;
    private static final int HEIGHT = 6;
    private static final int WANDERS = 12;
    private final Theme theme;
    private RunningJob.Steps steps = new RunningJob.Steps(0, 0);
    private int turn;

    ProgressLine(Composite parent, Theme theme) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.give(
                this,
                () -> steps.total() > 0
                        ? ShellWords.get("status.percent", steps.done() * 100 / steps.total())
                        : ShellWords.get("status.working"));
        Names.role(this, ACC.ROLE_PROGRESSBAR);
    }

    void show(RunningJob.Steps now) {
        steps = now;
        turn = (turn + 1) % WANDERS;
        redraw();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(WIDTH), theme.px(HEIGHT));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        gc.setBackground(theme.color(theme.palette().edge()));
        gc.fillRoundRectangle(0, 0, area.width, area.height, area.height, area.height);
        gc.setBackground(theme.color(theme.palette().accent()));
        if (steps.total() > 0) {
            int width = (int) (area.width * Math.min(steps.done(), steps.total()) / steps.total());
            gc.fillRoundRectangle(0, 0, width, area.height, area.height, area.height);
        } else {
            int piece = area.width / 4;
            int left = (area.width - piece) * turn / (WANDERS - 1);
            gc.fillRoundRectangle(left, 0, piece, area.height, area.height, area.height);
        }
    }
}
