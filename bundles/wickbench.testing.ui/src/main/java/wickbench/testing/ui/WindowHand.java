package wickbench.testing.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import wickbench.testing.Hand;
import wickbench.widgets.Badge;
import wickbench.widgets.FileChoice;
import wickbench.widgets.FileQuestion;

/** A hand at the window of another thread: mouse and keys go through the display, so that place and focus decide who gets them. */
public final class WindowHand implements Hand, FileChoice {
    private static final long PATIENCE_NANOS = 30_000_000_000L;
    private static final int LOOK_AGAIN_MILLIS = 15;
    private static final int UNHEARD_MILLIS = 1000;

    private final Thread window;
    private final Queue<Path> meant = new ConcurrentLinkedQueue<>();

    /** @param window whose display it is */
    public WindowHand(Thread window) {
        this.window = window;
    }

    @Override
    public void go(String title) {
        click(there(
                "place " + title,
                shell -> all(shell, Canvas.class)
                        .filter(item -> Optional.ofNullable(item.getToolTipText())
                                .filter(tip -> tip.startsWith(title))
                                .isPresent())
                        .findFirst()
                        .map(WindowHand::middle)));
    }

    @Override
    public void press(String verb) {
        click(there(
                "button " + verb,
                shell -> last(
                                shell,
                                Button.class,
                                button -> button.isEnabled()
                                        && button.getText().replace("&", "").equals(verb))
                        .map(WindowHand::middle)));
    }

    @Override
    public void fill(String label, String text) {
        click(there("field " + label, shell -> field(shell, label).map(WindowHand::middle)));
        key('a', 'a', SWT.CTRL);
        key(SWT.DEL, SWT.DEL, 0);
        text.chars().forEach(letter -> key((char) letter, 0, 0));
    }

    private static Optional<Text> field(Shell shell, String label) {
        return last(shell, Text.class, text -> text.getEditable() && label.equals(named(text)));
    }

    /** The words before a field, or in it while it is empty. */
    private static String named(Text text) {
        Control[] row = text.getParent().getChildren();
        int at = List.of(row).indexOf(text);
        return at > 0 && row[at - 1] instanceof Label label ? label.getText().replace("&", "") : text.getMessage();
    }

    @Override
    public void enter() {
        key(SWT.CR, SWT.CR, 0);
    }

    @Override
    public void down() {
        key((char) 0, SWT.ARROW_DOWN, 0);
    }

    @Override
    public void row(String words) {
        click(there(
                "row " + words,
                shell -> last(shell, Table.class, table -> true)
                        .flatMap(shown -> Stream.of(shown.getItems())
                                .filter(item -> text(item).contains(words))
                                .findFirst())
                        .map(WindowHand::middle)));
    }

    @Override
    public void allRows() {
        row("");
        key('a', 'a', SWT.CTRL);
    }

    private static String text(TableItem item) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < item.getParent().getColumnCount(); i++) {
            words.append(item.getText(i)).append('\t');
        }
        return words.toString();
    }

    @Override
    public void sees(String words) {
        there(
                "words " + words,
                shell -> Stream.concat(
                                all(shell, Label.class).map(Label::getText),
                                all(shell, Badge.class)
                                        .map(badge -> badge.shown().word()))
                        .filter(text -> text.contains(words))
                        .findFirst());
    }

    @Override
    public void means(Path file) {
        meant.add(file);
    }

    @Override
    public Optional<Path> ask(FileQuestion question) {
        return Optional.ofNullable(meant.poll());
    }

    @Override
    public void leave() {
        Optional.ofNullable(Display.findDisplay(window))
                .ifPresent(display ->
                        display.syncExec(() -> List.of(display.getShells()).forEach(shell -> {
                            if (!shell.isDisposed()) {
                                shell.close();
                            }
                        })));
    }

    /** Looks, on the window's thread, at the sheet in front until something is there. */
    private <T> T there(String what, Function<Shell, Optional<T>> look) {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (System.nanoTime() < end) {
            Display display = Display.findDisplay(window);
            if (display != null) {
                List<T> found = new ArrayList<>(1);
                display.syncExec(() -> front(display).flatMap(look).ifPresent(found::add));
                if (!found.isEmpty()) {
                    return found.get(0);
                }
            }
            rest();
        }
        throw new AssertionError("no " + what + " among " + words());
    }

    private List<String> words() {
        List<String> words = Collections.synchronizedList(new ArrayList<>());
        Optional.ofNullable(Display.findDisplay(window))
                .ifPresent(display -> display.syncExec(() -> front(display).ifPresent(shell -> {
                    all(shell, Label.class)
                            .map(Label::getText)
                            .filter(text -> !text.isBlank())
                            .forEach(words::add);
                    all(shell, Button.class)
                            .map(button -> "[" + button.getText() + "]")
                            .forEach(words::add);
                })));
        return words;
    }

    private static Optional<Shell> front(Display display) {
        return Stream.of(display.getShells())
                .filter(shell -> shell.isVisible() && shell.getShells().length == 0)
                .reduce((one, other) -> other);
    }

    private static <C extends Control> Optional<C> last(Shell shell, Class<C> type, Predicate<C> fits) {
        return all(shell, type).filter(fits).reduce((one, other) -> other);
    }

    private static <C extends Control> Stream<C> all(Composite in, Class<C> type) {
        return new Seen(in).all(type).stream().filter(Control::isVisible);
    }

    /** Returns where on the screen a control is, scrolled into view as the wheel would. */
    private static Point middle(Control control) {
        for (Composite over = control.getParent(); over != null; over = over.getParent()) {
            if (over instanceof ScrolledComposite scrolled) {
                scrolled.showControl(control);
            }
        }
        Point size = control.getSize();
        return control.toDisplay(size.x / 2, size.y / 2);
    }

    private static Point middle(TableItem item) {
        item.getParent().showItem(item);
        Rectangle cell = item.getBounds(0);
        return item.getParent().toDisplay(cell.x + cell.width / 2, cell.y + cell.height / 2);
    }

    private void click(Point at) {
        Display display = Display.findDisplay(window);
        display.syncExec(() -> display.post(mouse(SWT.MouseMove, 0, at)));
        rest();
        heard(
                display,
                SWT.MouseUp,
                () -> display.post(mouse(SWT.MouseDown, 1, at)) && display.post(mouse(SWT.MouseUp, 1, at)));
    }

    private static Event mouse(int type, int button, Point at) {
        Event event = new Event();
        event.type = type;
        event.button = button;
        event.x = at.x;
        event.y = at.y;
        return event;
    }

    private void key(char letter, int code, int with) {
        Display display = Display.findDisplay(window);
        heard(display, SWT.KeyUp, () -> {
            boolean posted = with == 0 || display.post(event(SWT.KeyDown, (char) 0, with));
            posted &= display.post(event(SWT.KeyDown, letter, code));
            posted &= display.post(event(SWT.KeyUp, letter, code));
            return posted && (with == 0 || display.post(event(SWT.KeyUp, (char) 0, with)));
        });
    }

    private static Event event(int type, char letter, int code) {
        Event event = new Event();
        event.type = type;
        event.character = letter;
        event.keyCode = code;
        return event;
    }

    /** Goes on when the window has seen the end of it: a busy machine hands it on late. */
    private void heard(Display display, int end, Supplier<Boolean> act) {
        boolean[] heard = new boolean[1];
        Listener listener = event -> heard[0] = true;
        display.syncExec(() -> {
            display.addFilter(end, listener);
            if (!act.get()) {
                throw new AssertionError("the display takes no events");
            }
        });
        long patience = System.nanoTime() + UNHEARD_MILLIS * 1_000_000L;
        boolean[] now = new boolean[1];
        while (!now[0] && System.nanoTime() < patience && !display.isDisposed()) {
            display.syncExec(() -> now[0] = heard[0]);
        }
        display.syncExec(() -> display.removeFilter(end, listener));
    }

    private static void rest() {
        try {
            Thread.sleep(LOOK_AGAIN_MILLIS);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
