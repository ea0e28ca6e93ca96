package wickbench.bench.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Says where in its run one is: the stages in a row, the present one underlined and in strong type. */
final class StepBar extends Canvas {
    private static final int HEIGHT = 30;
    private static final int GAP = 28;

    private final Theme theme;
    private Stage now = Stage.NEW;

    StepBar(Composite parent, Theme theme) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.theme = theme;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.give(this, () -> FlowWords.get("stage.name", now.ordinal() + 1, Stage.values().length, now.words()));
    }

    void show(Stage stage) {
        now = stage;
        redraw();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(600), theme.px(HEIGHT));
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int x = 0;
        for (Stage stage : Stage.values()) {
            x = word(gc, stage, x) + theme.px(GAP);
        }
    }

    private int word(GC gc, Stage stage, int x) {
        boolean here = stage == now;
        gc.setFont(theme.font(here ? Type.STRONG : Type.BODY));
        String words = FlowWords.get("stage.numbered", stage.ordinal() + 1, stage.words());
        Point size = gc.textExtent(words);
        RGB ink = here ? theme.palette().ink() : theme.palette().quiet();
        gc.setForeground(theme.color(ink));
        gc.drawText(words, x, theme.px(4), true);
        if (here) {
            gc.setBackground(theme.color(theme.palette().accent()));
            gc.fillRectangle(x, theme.px(HEIGHT - 4), size.x, theme.px(3));
        }
        return x + size.x;
    }
}
