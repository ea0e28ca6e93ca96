package wickbench.widgets;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;

/** The looks of one window: palette, lengths and fonts. Its fonts live until {@link #dispose}. */
public final class Theme {
    private static final double POINTS_PER_INCH = 72;
    private static final int IMAGE_SIDE = 12;
    /** Native tables make their rows as high as the images in them. */
    private static final int ROW_HEIGHT = 24;

    private static final int HEAD_HEIGHT = 22;

    private final Display display;
    private final Palette palette;
    private final Metrics metrics;
    private final Map<Type, Font> fonts = new EnumMap<>(Type.class);
    private final Map<ShapeOf, Image> images = new HashMap<>();
    private final Map<Integer, Image> spacers = new HashMap<>();

    public Theme(Display display, Palette palette, Metrics metrics) {
        this.display = display;
        this.palette = palette;
        this.metrics = metrics;
    }

    public Display display() {
        return display;
    }

    public Palette palette() {
        return palette;
    }

    public Metrics metrics() {
        return metrics;
    }

    /** Returns design pixels as pixels on the screen. */
    public int px(double length) {
        return metrics.px(length);
    }

    public Tone tone(Meaning meaning) {
        return palette.tone(meaning);
    }

    /** Returns a colour, which need not be disposed. */
    public Color color(RGB rgb) {
        return new Color(rgb);
    }

    /** Returns a font that this theme owns. */
    public Font font(Type type) {
        return fonts.computeIfAbsent(type, this::make);
    }

    /** Returns the drawing of a shape for a row of a table, as high as a row is to be; owned by this theme. */
    public Image image(Shape shape, Meaning meaning) {
        return images.computeIfAbsent(new ShapeOf(shape, meaning), this::draw);
    }

    /** Returns a clear image that makes a row as high as those with a shape; owned by this theme. */
    Image spacer() {
        return spacers.computeIfAbsent(ROW_HEIGHT, this::spacer);
    }

    /** Returns a clear image that makes the head of a table grow with the text size; owned by this theme. */
    Image headSpacer() {
        return spacers.computeIfAbsent(HEAD_HEIGHT, this::spacer);
    }

    /** Returns the factory of plain controls in this theme. */
    public Controls controls() {
        return new Controls(this);
    }

    public void dispose() {
        fonts.values().forEach(Font::dispose);
        fonts.clear();
        images.values().forEach(Image::dispose);
        images.clear();
        spacers.values().forEach(Image::dispose);
        spacers.clear();
    }

    private Image draw(ShapeOf what) {
        int side = px(IMAGE_SIDE);
        Image image = new Image(display, clear(side + px(6), ROW_HEIGHT));
        GC gc = new GC(image);
        Rectangle box = new Rectangle(1, (px(ROW_HEIGHT) - side) / 2, side, side);
        ShapePainter.paint(gc, this, what.shape(), what.meaning(), box);
        gc.dispose();
        return image;
    }

    private Image spacer(int height) {
        return new Image(display, clear(1, height));
    }

    private ImageData clear(int width, int height) {
        ImageData clear = new ImageData(width, px(height), 32, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        clear.alphaData = new byte[clear.width * clear.height];
        return clear;
    }

    private Font make(Type type) {
        String family = type.fixed()
                ? "Monospace"
                : display.getSystemFont().getFontData()[0].getName();
        // a font is asked for in points; whatever the display claims its inch to be, the height in pixels must follow
        int height = (int) Math.round(type.pixels() * metrics.percent() / 100 * POINTS_PER_INCH / display.getDPI().y);
        return new Font(display, new FontData(family, height, type.bold() ? SWT.BOLD : SWT.NORMAL));
    }

    private record ShapeOf(Shape shape, Meaning meaning) {}
}
