package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;
import wickbench.widgets.Theme;

/**
 * The bottom of the window, one row: the caution, and at its right what was said last or long work.
 *
 * <p>Its height follows from the width of the window alone, so that no page jumps when something is said or work begins; the
 * caution breaks into lines where the other needs room, and is never hidden.
 */
final class Footer {
    /** High enough for the Cancel of long work. */
    private static final int HEIGHT = 38;

    /** What the caution keeps of the width, whatever is said beside it. */
    private static final double CAUTION_KEEPS = 0.6;

    private final Theme theme;
    private final Composite row;
    private final Control caution;
    private final StatusBar status;

    Footer(Composite parent, Theme theme, JobBoard board) {
        this.theme = theme;
        row = new Composite(parent, SWT.NONE);
        row.setBackground(theme.color(theme.palette().raised()));
        row.addListener(SWT.Paint, event -> {
            event.gc.setForeground(theme.color(theme.palette().edge()));
            event.gc.drawLine(0, 0, row.getSize().x, 0);
        });
        row.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
        row.setLayout(new Beside());
        caution = Caution.in(row, theme);
        status = new StatusBar(row, theme, board);
    }

    StatusBar status() {
        return status;
    }

    /** The caution at the left, the other at the right, both half way down. */
    private final class Beside extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wide, int high, boolean flush) {
            int width = wide == SWT.DEFAULT ? caution.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + 2 * side() : wide;
            int kept = (int) (CAUTION_KEEPS * (width - 2 * side()));
            int height =
                    caution.computeSize(kept, SWT.DEFAULT).y + theme.metrics().grid(1);
            return new Point(width, Math.max(theme.px(HEIGHT), height));
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle area = composite.getClientArea();
            Rectangle inner = new Rectangle(side(), 0, area.width - 2 * side(), area.height);
            int wanted = status.width();
            int most = Math.max(
                    (int) ((1 - CAUTION_KEEPS) * inner.width) - gap(),
                    inner.width - caution.computeSize(SWT.DEFAULT, SWT.DEFAULT).x - gap());
            int beside = Math.min(wanted, most);
            int left = inner.width - (beside == 0 ? 0 : beside + gap());
            place(caution, inner.x, left, inner.height);
            for (Control control : status.controls()) {
                place(control, inner.x + inner.width - beside, beside, inner.height);
            }
        }

        private void place(Control control, int x, int width, int room) {
            int height = Math.min(control.computeSize(width, SWT.DEFAULT).y, room);
            control.setBounds(x, (room - height) / 2, width, height);
        }

        private int side() {
            return theme.metrics().grid(2);
        }

        private int gap() {
            return theme.metrics().grid(3);
        }
    }
}
