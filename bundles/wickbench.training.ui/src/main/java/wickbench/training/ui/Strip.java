package wickbench.training.ui;

import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.drill.StripPicture;
import wickbench.drill.StripWindow;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A strip of the drill in its housing, drawn point for point: stretched, its contrast would be another. */
final class Strip extends Canvas {
    /** The same in light and dark looks: what surrounds a strip changes how faint a line can be seen. */
    private static final RGB GROUND = new RGB(0xB4, 0xB4, 0xB2);

    private static final RGB HOUSING = new RGB(0xE6, 0xE6, 0xE3);
    private static final RGB RIM = new RGB(0x80, 0x84, 0x88);
    private static final RGB INK = new RGB(0x20, 0x26, 0x2C);
    private static final PaletteData RED_GREEN_BLUE = new PaletteData(0xFF0000, 0xFF00, 0xFF);
    private static final int WIDTH = 320;
    private static final int AROUND = 2;

    private final Theme theme;
    private final StripWindow window;
    private Optional<Image> image = Optional.empty();

    Strip(Composite parent, Theme theme, StripWindow window, Supplier<String> says) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.window = window;
        setBackground(new Color(GROUND));
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Dispose, event -> letGo());
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        Names.give(this, says);
    }

    void show(StripPicture picture) {
        letGo();
        byte[] codes = picture.codes();
        image = Optional.of(new Image(
                getDisplay(),
                new ImageData(picture.width(), picture.height(), 24, RED_GREEN_BLUE, 3 * picture.width(), codes)));
        redraw();
    }

    /** Shows nothing between two strips, so that one is not compared with the other. */
    void hide() {
        letGo();
        redraw();
    }

    /** Tells whether a strip is in its housing. */
    boolean shows() {
        return image.isPresent();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(WIDTH), window.height() + 2 * AROUND * window.line());
    }

    private void letGo() {
        image.ifPresent(Image::dispose);
        image = Optional.empty();
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        int left = (area.width - window.width()) / 2;
        int top = (area.height - window.height()) / 2;
        int around = window.line() * 2;
        gc.setBackground(new Color(HOUSING));
        gc.fillRoundRectangle(
                left - 2 * around,
                top - window.line(),
                window.width() + 4 * around,
                window.height() + 2 * window.line(),
                around,
                around);
        mark(gc, "C", left - 2 * around, around, top + window.control());
        mark(gc, "T", left - 2 * around, around, top + window.test());
        gc.setForeground(new Color(RIM));
        gc.drawRectangle(left - 1, top - 1, window.width() + 1, window.height() + 1);
        image.ifPresent(picture -> gc.drawImage(picture, left, top));
        if (isFocusControl()) {
            gc.setForeground(new Color(INK));
            gc.setLineWidth(theme.px(2));
            gc.drawRectangle(1, 1, area.width - 3, area.height - 3);
            gc.setLineWidth(1);
        }
    }

    /** The mark beside where a line would be, so that everybody knows where to look. */
    private void mark(GC gc, String letter, int left, int around, int row) {
        gc.setFont(theme.font(Type.STRONG));
        gc.setForeground(new Color(INK));
        Point size = gc.textExtent(letter);
        gc.drawText(letter, left + around - size.x / 2, row + (window.line() - size.y) / 2, true);
    }
}
