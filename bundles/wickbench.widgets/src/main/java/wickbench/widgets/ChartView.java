package wickbench.widgets;

import java.util.Optional;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartLook;
import wickbench.api.chart.ChartPainter;
import wickbench.api.chart.ChartPicture;
import wickbench.api.chart.ChartPlot;

/**
 * A chart to look at, drawn behind the screen; the picture before stays until the next one is done.
 *
 * <p>The pointer near a point says it in words. The wheel zooms along x, drawing a frame shows what is in it, a double click
 * shows everything. With the focus, the left and right arrows go from point to point (with Ctrl in longer steps, Home and End to
 * either end), up and down from series to series; Shift and an arrow move the window; + and - zoom, 0 shows everything. A screen
 * reader hears the title and the point in hand.
 */
public final class ChartView extends Canvas {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 220;

    private final Desk desk;
    private final Optional<ChartPainter> painter;
    private final ChartLens lens = new ChartLens();
    private Optional<Chart> chart = Optional.empty();
    private Optional<ChartCursor> cursor = Optional.empty();
    private Optional<Rectangle> frame = Optional.empty();
    private Optional<IntConsumer> chosen = Optional.empty();
    private Optional<Image> image = Optional.empty();
    private Optional<ChartLook> drawing = Optional.empty();
    private Optional<ChartLook> drawn = Optional.empty();

    /**
     * @param painter draws; where there is none, the view says so
     */
    public ChartView(Composite parent, Desk desk, Optional<ChartPainter> painter) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        this.desk = desk;
        this.painter = painter;
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Resize, event -> draw());
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Dispose, event -> letGo());
        new ChartKeys(this).listen();
        new ChartPointer(this, desk.theme()).listen();
        Names.give(this, this::says);
    }

    /** Shows another chart, the whole of it; its series must not change afterwards. */
    public void chart(Chart next) {
        chart = Optional.of(next);
        cursor = Optional.empty();
        drawn = Optional.empty();
        lens.reset();
        draw();
    }

    /** Tells the listener which point of its series a person chose, by Enter or a click; counted from 0. */
    public void onChoose(IntConsumer listener) {
        chosen = Optional.of(listener);
    }

    /** Chooses the point in hand. */
    void choose() {
        cursor.ifPresent(point -> chosen.ifPresent(listener -> listener.accept(point.point())));
    }

    /** Returns what a screen reader hears: the title, and the point in hand. */
    public String says() {
        String title = chart.map(Chart::title).orElse("");
        if (painter.isEmpty()) {
            return WidgetWords.get("chart.voice", title, WidgetWords.get("chart.no-painter"));
        }
        return WidgetWords.get(
                "chart.voice",
                title,
                said().map(words -> words.replace("\n", "; ")).orElse(WidgetWords.get("chart.keys")));
    }

    /** Tells whether what is wanted is on the screen. */
    public boolean settled() {
        return drawing.isEmpty() && (painter.isEmpty() || look().equals(drawn));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        Theme theme = desk.theme();
        return new Point(
                widthHint == SWT.DEFAULT ? theme.px(WIDTH) : widthHint,
                heightHint == SWT.DEFAULT ? theme.px(HEIGHT) : heightHint);
    }

    ChartLens lens() {
        return lens;
    }

    Optional<Chart> shown() {
        return chart;
    }

    Optional<ChartCursor> cursor() {
        return cursor;
    }

    /** Takes a point in hand, or none. */
    void cursor(Optional<ChartCursor> next) {
        if (!next.equals(cursor)) {
            cursor = next;
            redraw();
            getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
        }
    }

    void frame(Optional<Rectangle> next) {
        frame = next;
        redraw();
    }

    /** Returns how many pixels of the screen make one of the toolkit's. */
    double density() {
        return getMonitor().getZoom() / 100.0;
    }

    /** Draws anew when something else is wanted than was drawn; one picture at a time, the newest wish next. */
    void draw() {
        Optional<ChartLook> wanted = look();
        if (wanted.isEmpty() || painter.isEmpty() || drawing.isPresent() || wanted.equals(drawn)) {
            redraw();
            return;
        }
        Chart what = chart.orElseThrow();
        ChartLook how = wanted.get();
        drawing = wanted;
        desk.jobs()
                .run(
                        WidgetWords.get("chart.drawing"),
                        progress -> Drawn.of(painter.get().paint(what, how)),
                        done -> take(what, how, done));
    }

    private record Drawn(ChartPicture picture, ImageData pixels) {
        static Drawn of(ChartPicture picture) {
            return new Drawn(picture, ChartImage.of(picture));
        }
    }

    private void take(Chart what, ChartLook how, Drawn done) {
        if (isDisposed()) {
            return;
        }
        drawing = Optional.empty();
        if (chart.filter(now -> now == what).isPresent()) {
            letGo();
            image = Optional.of(new Image(getDisplay(), done.pixels()));
            drawn = Optional.of(how);
            lens.take(done.picture(), how.window().isEmpty());
        }
        draw();
    }

    private void letGo() {
        image.ifPresent(Image::dispose);
        image = Optional.empty();
    }

    /** Returns the picture that is not disposed of yet. */
    Optional<Image> held() {
        return image;
    }

    private Optional<ChartLook> look() {
        Rectangle area = getClientArea();
        Theme theme = desk.theme();
        double density = density();
        int width = (int) Math.round(area.width * density);
        int height = (int) Math.round(area.height * density);
        double zoom = theme.metrics().percent() / 100.0 * density;
        return chart.filter(any -> width > 0 && height > 0)
                .map(any -> new ChartLook(width, height, zoom, theme.palette().dark(), lens.window()));
    }

    private Optional<String> said() {
        return chart.flatMap(what -> cursor.map(new ChartWords(what)::say));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(desk.theme().color(desk.theme().palette().surface()));
        gc.fillRectangle(area);
        ChartOverlay overlay = new ChartOverlay(gc, desk.theme(), area);
        if (painter.isEmpty()) {
            overlay.words(WidgetWords.get("chart.no-painter"));
        }
        image.ifPresent(picture -> {
            Rectangle all = picture.getBounds();
            gc.drawImage(picture, 0, 0, all.width, all.height, 0, 0, (int) Math.round(all.width / density()), (int)
                    Math.round(all.height / density()));
        });
        lens.plot().ifPresent(plot -> mark(overlay, plot));
        frame.ifPresent(overlay::frame);
        if (isFocusControl()) {
            overlay.focus();
        }
    }

    private void mark(ChartOverlay overlay, ChartPlot plot) {
        Chart what = chart.orElseThrow();
        cursor.ifPresent(point -> {
            double x = plot.pixelX(point.x(what)) / density();
            double y = plot.pixelY(point.y(what)) / density();
            overlay.point(point.of(what).mark(), x, y, said().orElseThrow());
        });
    }
}
