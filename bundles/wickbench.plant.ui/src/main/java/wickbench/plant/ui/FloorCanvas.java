package wickbench.plant.ui;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import wickbench.plant.PointLook;
import wickbench.plant.site.Spot;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;

/**
 * The floor picture with its points. A click or the arrows choose one; while a point is being placed, a click puts it there, or the
 * arrows move the cross and Enter does.
 */
final class FloorCanvas extends Canvas {
    private static final double STEP = 0.01;
    private static final double REACH = 18;

    private final Theme theme;
    private final Consumer<PointLook> chosen;
    private final BiConsumer<Double, Double> placed;
    private Optional<Image> image = Optional.empty();
    private List<PointLook> looks = List.of();
    private Optional<String> here = Optional.empty();
    private Optional<String> placing = Optional.empty();
    private double crossX = 0.5;
    private double crossY = 0.5;

    /** @param placed hears the shares of width and height at which the point in hand was put */
    FloorCanvas(Composite parent, Theme theme, Consumer<PointLook> chosen, BiConsumer<Double, Double> placed) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.chosen = chosen;
        this.placed = placed;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, event -> at(event.x, event.y));
        addListener(SWT.KeyDown, this::key);
        addListener(
                SWT.Traverse,
                event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                        || event.detail == SWT.TRAVERSE_TAB_PREVIOUS
                        || event.detail == SWT.TRAVERSE_MNEMONIC);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Dispose, event -> image.ifPresent(Image::dispose));
        Names.give(this, this::inWords);
    }

    void picture(ImageData data) {
        image.ifPresent(Image::dispose);
        image = Optional.of(new Image(getDisplay(), data));
        redraw();
    }

    void show(List<PointLook> points) {
        looks = points.stream().filter(look -> look.spot().isPresent()).toList();
        redraw();
    }

    void choose(String point) {
        here = Optional.of(point);
        redraw();
    }

    /** Begins to place a point. */
    void place(String point) {
        placing = Optional.of(point);
        setFocus();
        redraw();
    }

    /** Returns what a screen reader hears: the point in hand, or how many there are. */
    String inWords() {
        return placing.map(point -> PlantUiWords.get("picture.placing", point))
                .or(() -> look().map(look -> PlantUiWords.get(
                        "picture.point",
                        look.point().name(),
                        PointMarks.of(look).word())))
                .orElseGet(() -> PlantUiWords.get("picture.count", looks.size()));
    }

    private Optional<PointLook> look() {
        return looks.stream()
                .filter(look -> here.filter(look.point().name()::equals).isPresent())
                .findFirst();
    }

    private void key(Event event) {
        if (placing.isPresent()) {
            placingKey(event);
        } else if (event.keyCode == SWT.ARROW_RIGHT || event.keyCode == SWT.ARROW_DOWN) {
            step(1);
        } else if (event.keyCode == SWT.ARROW_LEFT || event.keyCode == SWT.ARROW_UP) {
            step(-1);
        }
    }

    private void placingKey(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_RIGHT -> crossX = Math.min(1 - STEP, crossX + STEP);
            case SWT.ARROW_LEFT -> crossX = Math.max(0, crossX - STEP);
            case SWT.ARROW_DOWN -> crossY = Math.min(1 - STEP, crossY + STEP);
            case SWT.ARROW_UP -> crossY = Math.max(0, crossY - STEP);
            case SWT.CR, SWT.KEYPAD_CR -> put(crossX, crossY);
            case SWT.ESC -> placing = Optional.empty();
            default -> {
                return;
            }
        }
        redraw();
    }

    private void put(double x, double y) {
        placing = Optional.empty();
        placed.accept(x, y);
        redraw();
    }

    private void step(int by) {
        if (!looks.isEmpty()) {
            int now = look().map(looks::indexOf).orElse(by > 0 ? -1 : 0);
            chosen.accept(looks.get(Math.floorMod(now + by, looks.size())));
        }
    }

    private void at(int x, int y) {
        setFocus();
        Rectangle box = box();
        if (placing.isPresent()) {
            if (box.contains(x, y)) {
                put((double) (x - box.x) / box.width, (double) (y - box.y) / box.height);
            }
            return;
        }
        looks.stream()
                .filter(look -> distance(look.spot().orElseThrow(), box, x, y) < theme.px(REACH))
                .min((one, other) -> Double.compare(
                        distance(one.spot().orElseThrow(), box, x, y),
                        distance(other.spot().orElseThrow(), box, x, y)))
                .ifPresent(chosen);
    }

    private static double distance(Spot spot, Rectangle box, int x, int y) {
        return Math.hypot(box.x + share(spot.x()) * box.width - x, box.y + share(spot.y()) * box.height - y);
    }

    private static double share(BigDecimal part) {
        return part.doubleValue();
    }

    /** The picture as large as it fits, its sides as they are. */
    private Rectangle box() {
        Rectangle room = getClientArea();
        Rectangle of = image.map(Image::getBounds).orElse(new Rectangle(0, 0, 4, 3));
        double scale = Math.min((double) room.width / of.width, (double) room.height / of.height);
        int width = Math.max(1, (int) (of.width * scale));
        int height = Math.max(1, (int) (of.height * scale));
        return new Rectangle((room.width - width) / 2, (room.height - height) / 2, width, height);
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        gc.setInterpolation(SWT.HIGH);
        Rectangle box = box();
        if (image.isEmpty()) {
            FloorPainter.nothing(gc, theme, getClientArea());
            return;
        }
        image.ifPresent(floor -> {
            Rectangle of = floor.getBounds();
            gc.drawImage(floor, 0, 0, of.width, of.height, box.x, box.y, box.width, box.height);
        });
        FloorPainter painter = new FloorPainter(gc, theme, box);
        looks.forEach(look -> painter.point(look, false));
        look().ifPresent(look -> painter.point(look, true));
        placing.ifPresent(point -> cross(gc, box));
        if (isFocusControl()) {
            Rectangle room = getClientArea();
            gc.setForeground(theme.color(theme.palette().accent()));
            gc.setLineWidth(theme.px(2));
            gc.drawRectangle(room.x + 1, room.y + 1, room.width - 3, room.height - 3);
            gc.setLineWidth(1);
        }
    }

    private void cross(GC gc, Rectangle box) {
        int x = box.x + (int) (crossX * box.width);
        int y = box.y + (int) (crossY * box.height);
        gc.setForeground(theme.color(theme.palette().accent()));
        gc.setLineWidth(theme.px(2));
        gc.drawLine(x, box.y, x, box.y + box.height);
        gc.drawLine(box.x, y, box.x + box.width, y);
        gc.setLineWidth(1);
    }
}
