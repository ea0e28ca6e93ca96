package wickbench.widgets;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * A bar filled with the colour of a meaning and outlined in its ink.
 *
 * <p>The published colours alone do not all stand out of a light ground; the ink does, at 3 to 1 and more (WCAG 2.2, 1.4.11).
 */
public final class MeaningBar {
    private MeaningBar() {}

    /** Paints it; nothing where it has no width. */
    public static void paint(GC gc, Theme theme, Meaning meaning, Rectangle bar) {
        if (bar.width > 0 && bar.height > 0) {
            gc.setBackground(theme.color(theme.tone(meaning).mark()));
            gc.fillRectangle(bar);
            gc.setForeground(theme.color(theme.tone(meaning).ink()));
            gc.setLineWidth(1);
            gc.drawRectangle(bar.x, bar.y, bar.width - 1, bar.height - 1);
        }
    }

    /** Paints a bar of another form, given by its corners x, y, x, y, … */
    public static void paint(GC gc, Theme theme, Meaning meaning, int... corners) {
        gc.setBackground(theme.color(theme.tone(meaning).mark()));
        gc.fillPolygon(corners);
        gc.setForeground(theme.color(theme.tone(meaning).ink()));
        gc.setLineWidth(1);
        gc.drawPolygon(corners);
    }
}
