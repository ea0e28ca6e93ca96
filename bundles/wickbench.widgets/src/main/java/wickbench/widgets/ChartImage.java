package wickbench.widgets;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import wickbench.api.chart.ChartPicture;

/** Turns a drawn chart into what the window shows. */
final class ChartImage {
    private static final PaletteData RED_GREEN_BLUE = new PaletteData(0xFF0000, 0xFF00, 0xFF);

    private ChartImage() {}

    /** Returns its pixels without their alpha, since a chart has a ground; any thread may ask. */
    static ImageData of(ChartPicture picture) {
        int[] argb = picture.argb();
        byte[] bytes = new byte[argb.length * 4];
        for (int i = 0; i < argb.length; i++) {
            bytes[4 * i + 1] = (byte) (argb[i] >> 16);
            bytes[4 * i + 2] = (byte) (argb[i] >> 8);
            bytes[4 * i + 3] = (byte) argb[i];
        }
        return new ImageData(picture.width(), picture.height(), 32, RED_GREEN_BLUE, 4, bytes);
    }
}
