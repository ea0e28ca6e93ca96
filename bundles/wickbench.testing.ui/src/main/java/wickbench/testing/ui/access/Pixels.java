package wickbench.testing.ui.access;

import java.util.Optional;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/**
 * What stands on the screen where a control is, with a little around it.
 *
 * @param at where that is
 */
record Pixels(Rectangle at, ImageData data) {
    private static final int AROUND = 2;

    /** Looks at the screen, on the display's thread; empty for what has no room. */
    static Optional<Pixels> of(Control control) {
        if (control.isDisposed() || !control.isVisible()) {
            return Optional.empty();
        }
        Point corner = control.toDisplay(0, 0);
        Point size = control.getSize();
        Display display = control.getDisplay();
        Rectangle at = new Rectangle(corner.x - AROUND, corner.y - AROUND, size.x + 2 * AROUND, size.y + 2 * AROUND)
                .intersection(display.getBounds());
        if (at.isEmpty()) {
            return Optional.empty();
        }
        GC gc = new GC(display);
        Image image = new Image(display, at.width, at.height);
        gc.copyArea(image, at.x, at.y);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return Optional.of(new Pixels(at, data));
    }

    /** Returns how many are other than in a picture of the same place. */
    int other(Pixels before) {
        int other = 0;
        for (int y = 0; y < Math.min(data.height, before.data.height); y++) {
            for (int x = 0; x < Math.min(data.width, before.data.width); x++) {
                if (data.getPixel(x, y) != before.data.getPixel(x, y)) {
                    other++;
                }
            }
        }
        return other;
    }
}
