package wickbench.shell;

import java.util.stream.IntStream;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import wickbench.widgets.Palette;
import wickbench.widgets.Pen;

/** The sign of the program for the task bar, drawn in each size that systems ask for. */
final class WindowIcon {
    private static final int[] SIDES = {16, 32, 48, 128};

    private WindowIcon() {}

    /** Returns images that live as long as the display. */
    static Image[] images(Display display) {
        Image[] images =
                IntStream.of(SIDES).mapToObj(side -> image(display, side)).toArray(Image[]::new);
        display.disposeExec(() -> {
            for (Image image : images) {
                image.dispose();
            }
        });
        return images;
    }

    private static Image image(Display display, int side) {
        ImageData clear = new ImageData(side, side, 32, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        clear.alphaData = new byte[side * side];
        Image image = new Image(display, clear);
        GC gc = new GC(image);
        Color accent = new Color(Palette.ofLight().accent());
        Pen.draw(gc, Wordmark.SIGN, new Rectangle(0, 0, side, side), accent);
        gc.dispose();
        return image;
    }
}
