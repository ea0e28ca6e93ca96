package wickbench.widgets;

import org.eclipse.swt.graphics.Rectangle;

/** A rectangle in design pixels. */
record Box(double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    Rectangle on(Metrics metrics) {
        int x = metrics.px(left);
        int y = metrics.px(top);
        return new Rectangle(x, y, metrics.px(right()) - x, metrics.px(bottom()) - y);
    }
}
