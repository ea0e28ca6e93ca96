package wickbench.shell;

import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import wickbench.widgets.Names;
import wickbench.widgets.Palette;
import wickbench.widgets.Pen;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One place in the rail: glyph and name, pressed by click, Enter or Space. */
final class RailItem extends Canvas {
    /** As high as it is where there is room. */
    static final int HEIGHT = 40;

    /** As low as it still can be pressed and read. */
    static final int LOW = 28;

    private static final int GLYPH = 20;
    private final Theme theme;
    private final Place place;
    private boolean current;
    private boolean hot;
    private Runnable press = () -> {};
    private IntConsumer step = by -> {};

    RailItem(Composite parent, Theme theme, Place place, int number) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.place = place;
        setBackground(parent.getBackground());
        String keys = keys(number);
        setToolTipText(keys.isEmpty() ? place.name() : ShellWords.get("rail.tip", place.name(), keys));
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, event -> press.run());
        addListener(SWT.MouseEnter, event -> hot(true));
        addListener(SWT.MouseExit, event -> hot(false));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.KeyDown, this::key);
        addListener(
                SWT.Traverse,
                event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT
                        && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS
                        && event.detail != SWT.TRAVERSE_RETURN);
        Names.give(this, place::name);
        Names.keys(this, keys);
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_TABITEM;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (current ? ACC.STATE_SELECTED : 0);
            }
        });
    }

    /** Returns the keys that go there, such as {@code Ctrl+1, Alt+Shift+B}. */
    private String keys(int number) {
        Stream<String> digit = number <= Keys.DIGITS ? Stream.of(ShellWords.get("rail.digit", number)) : Stream.of();
        Stream<String> letter = place
                .letter()
                .map(Character::toUpperCase)
                .map(mark -> ShellWords.get("rail.letter", mark.toString()))
                .stream();
        return Stream.concat(digit, letter).collect(Collectors.joining(", "));
    }

    String id() {
        return place.id();
    }

    boolean current() {
        return current;
    }

    void current(boolean is) {
        current = is;
        redraw();
    }

    void onPress(Runnable act) {
        press = act;
    }

    /** Hears of an arrow key: 1 down, -1 up. */
    void onStep(IntConsumer act) {
        step = act;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(widthHint == SWT.DEFAULT ? theme.px(HEIGHT) : widthHint, theme.px(HEIGHT));
    }

    private void hot(boolean is) {
        hot = is;
        redraw();
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_DOWN -> step.accept(1);
            case SWT.ARROW_UP -> step.accept(-1);
            case SWT.CR, SWT.KEYPAD_CR, ' ' -> press.run();
            default -> event.doit = true;
        }
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        Palette palette = theme.palette();
        gc.setAntialias(SWT.ON);
        if (current || hot) {
            gc.setBackground(theme.color(current ? palette.selection() : palette.stripe()));
            gc.fillRoundRectangle(0, 0, area.width, area.height, theme.px(12), theme.px(12));
        }
        if (current) {
            gc.setBackground(theme.color(palette.accent()));
            gc.fillRoundRectangle(
                    0, area.height / 4, theme.px(4), area.height - 2 * (area.height / 4), theme.px(4), theme.px(4));
        }
        RGB ink = current ? palette.onSelection() : palette.ink();
        int side = theme.px(GLYPH);
        Pen.draw(
                gc,
                place.page().glyph(),
                new Rectangle(theme.px(14), (area.height - side) / 2, side, side),
                theme.color(current ? palette.accent() : palette.quiet()));
        gc.setFont(theme.font(current ? Type.STRONG : Type.BODY));
        gc.setForeground(theme.color(ink));
        gc.drawText(
                place.page().title(),
                theme.px(46),
                (area.height - gc.textExtent(place.name()).y) / 2,
                SWT.DRAW_TRANSPARENT | SWT.DRAW_MNEMONIC);
        if (isFocusControl()) {
            gc.setForeground(theme.color(palette.accent()));
            gc.setLineWidth(theme.px(2));
            gc.drawRoundRectangle(1, 1, area.width - 3, area.height - 3, theme.px(12), theme.px(12));
        }
    }
}
